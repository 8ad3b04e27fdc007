package provender.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Keeper;
import provender.people.MemberStore;
import provender.people.MemberStore.Change;
import provender.people.MemberStore.Member;
import provender.people.Members;
import provender.people.Members.Outcome;
import provender.people.Role;

/** The people of a household: who they are, what they may do, and how that changes. */
@Path("/api/v1")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class PeopleResource {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int LAST_CHANGES = 50;

  private final MemberStore store;
  private final Members members;
  private final Signed signed;

  PeopleResource(MemberStore store, Members members, Signed signed) {
    this.store = store;
    this.members = members;
    this.signed = signed;
  }

  @GET
  @Path("/households/{household}/people")
  @Operation(
      summary = "Who belongs to the household and who left, the last 50 changes among them, and for stewards the open invitations",
      description = "Each change says when it was, by whom, about whom, and what: founded, invited, joined, role, ended, left and so on.")
  public String people(@PathParam("household") String household) {
    boolean steward = signed.memberOf(household).role() == Role.STEWARD;
    ObjectNode answer = JSON.createObjectNode();
    answer.putArray("people");
    answer.putArray("former");
    for (Member member : store.members(household)) {
      ObjectNode one = answer.withArray(member.belongs() ? "people" : "former").addObject();
      one.put("id", member.keeper().id()).put("name", member.keeper().name());
      Instant ended = member.endedAt();
      if (ended == null) {
        one.put("role", SessionCookies.lower(member.role().name()));
      } else {
        one.put("endedAt", ended.toString());
      }
    }
    answer.putArray("changes");
    store.changes(household, LAST_CHANGES).forEach(change -> write(change, answer.withArray("changes").addObject()));
    if (steward) {
      answer.putArray("invitations");
      store.invitations(household, Instant.now()).forEach(one -> answer.withArray("invitations").addObject()
          .put("id", one.id()).put("role", SessionCookies.lower(one.role().name())).put("expiresAt", one.expiresAt().toString()));
    }
    return answer.toString();
  }

  @PUT
  @Path("/households/{household}/people/{person}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Change what someone may do; stewards only. The last steward stays one (409, kind last-steward)")
  public Response changeRole(@PathParam("household") String household, @PathParam("person") String person, String body) {
    Keeper steward = signed.stewardOf(household);
    return told(members.changeRole(household, steward, person, Asked.role(Json.object(body)), Instant.now()));
  }

  @DELETE
  @Path("/households/{household}/people/{person}")
  @Operation(
      summary = "End someone's membership as a steward, or leave; what they wrote stays under their name",
      description = "The last steward cannot go (409, kind last-steward): hand the household over first.")
  public Response end(@PathParam("household") String household, @PathParam("person") String person) {
    signed.memberOf(household);
    Keeper asking = signed.keeper();
    Keeper by = asking.id().equals(person) ? asking : signed.stewardOf(household);
    return told(members.end(household, by, person, Instant.now()));
  }

  @POST
  @Path("/households/{household}/hand-over")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Make another person the steward in one's own place and go on as a keeper; stewards only")
  public Response handOver(@PathParam("household") String household, String body) {
    Keeper steward = signed.stewardOf(household);
    return told(members.handOver(household, steward, Asked.text(Json.object(body), "person"), Instant.now()));
  }

  private static Response told(Outcome outcome) {
    return switch (outcome) {
      case DONE -> Response.noContent().build();
      case UNKNOWN -> throw Problem.notFound();
      case LAST_STEWARD -> throw Problem.conflict("last-steward", "a household keeps one steward: make someone else a steward first");
    };
  }

  private static void write(Change change, ObjectNode one) {
    one.put("at", change.at().toString()).put("by", change.by()).put("what", SessionCookies.lower(change.what().name()));
    if (change.about() != null) {
      one.put("about", change.about());
    }
    Role role = change.role();
    if (role != null) {
      one.put("role", SessionCookies.lower(role.name()));
    }
  }
}
