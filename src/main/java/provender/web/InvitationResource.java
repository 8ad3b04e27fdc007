package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Households;
import provender.people.Keeper;
import provender.people.Members;

/** Who is let into a household. */
@Path("/api/v1")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class InvitationResource {
  private final Households households;
  private final Members members;
  private final Signed signed;
  private final SessionCookies cookies;

  InvitationResource(Households households, Members members, Signed signed, SessionCookies cookies) {
    this.households = households;
    this.members = members;
    this.signed = signed;
    this.cookies = cookies;
  }

  @POST
  @Path("/households/{household}/invitations")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "A code that lets one person in, once, within seven days; stewards only")
  public Map<String, Object> invite(@PathParam("household") String household, String body) {
    Keeper steward = signed.stewardOf(household);
    Instant now = Instant.now();
    String code = households.invite(household, steward, Asked.role(Json.object(body)), now);
    return Map.of("code", code, "expiresAt", now.plus(Households.INVITATION_LASTS).toString());
  }

  @DELETE
  @Path("/households/{household}/invitations/{invitation}")
  @Operation(summary = "Take an invitation back, by the id that the list of people gives it; stewards only")
  public Response withdraw(@PathParam("household") String household, @PathParam("invitation") String invitation) {
    Keeper steward = signed.stewardOf(household);
    if (!members.withdrawInvitation(household, steward, invitation, Instant.now())) {
      throw Problem.notFound();
    }
    return Response.noContent().build();
  }

  @POST
  @Transactional
  @Path("/join")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Follow an invitation: with name and password as someone new, or signed in with the code alone")
  public Response join(String body, HttpServerRequest request) {
    JsonNode asked = Json.object(body);
    String code = Asked.text(asked, "code");
    Instant now = Instant.now();
    Households.Entry entry =
        asked.has("name")
            ? households.join(code, Asked.text(asked, "name"), Asked.text(asked, "password"), now)
            : households.join(code, signed.keeper(), now);
    return cookies.entered(entry, asked, request);
  }
}
