package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.util.RawValue;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.demo.DemoTanks;
import provender.people.MemberStore;
import provender.people.MemberStore.Member;
import provender.people.PeopleStore;
import provender.people.Seat;
import provender.people.SessionStore;
import provender.sync.Answer;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Page;
import provender.sync.JournalStore.Position;
import provender.sync.JournalStore.Stored;
import provender.sync.Pull;
import provender.sync.Push;
import provender.sync.TankKey;

/** The tanks one may see, and their journals: entries in, entries out. */
@Path("/api/v1/tanks")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class TankResource {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JournalStore journals;
  private final PeopleStore people;
  private final MemberStore members;
  private final SessionStore sessions;
  private final Signed signed;
  private final Hints hints;
  private final DemoTanks invented;

  TankResource(
      JournalStore journals,
      PeopleStore people,
      MemberStore members,
      SessionStore sessions,
      Signed signed,
      Hints hints,
      DemoTanks invented) {
    this.journals = journals;
    this.people = people;
    this.members = members;
    this.sessions = sessions;
    this.signed = signed;
    this.hints = hints;
    this.invented = invented;
  }

  @GET
  @Operation(
      summary = "The tanks of the signed-in keeper's households, with where each journal ends",
      description = "keepers are all who belong or belonged; seenAt, of those who may record, is when a phone of theirs was last heard of.")
  public String tanks() {
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode tanks = answer.putArray("tanks");
    for (Seat seat : people.seats(signed.keeper().id())) {
      Position position = journals.position(key(seat));
      ObjectNode tank = tanks.addObject();
      write(members.members(seat.household()), tank.withArray("keepers"));
      tank.put("id", seat.tank())
          .put("household", seat.household())
          .put("name", seat.tankName())
          .put("invented", invented.isInvented(seat.tank()))
          .put("role", SessionCookies.lower(seat.role().name()))
          .put("zone", seat.zone())
          .put("head", position.head())
          .put("epoch", position.epoch());
    }
    return answer.put("serverTime", Instant.now().toString()).toString();
  }

  @POST
  @Path("/{tank}/entries")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Push at most 500 entries in 256 KiB; each is answered for itself, and a 200 means kept",
      description =
          "A body may be packed with gzip (Content-Encoding). outcome is accepted, duplicate, conflicted or refused. A conflicted entry is kept in its place like an accepted one, but the"
              + " fields named (a feeder's drops, times and running, a fish's status) stay as they stood, since its writer had not seen"
              + " them (saw); they wait for a record entry whose saw names the newest place. A refused one carries a problem. A 403"
              + " has kind guest, steward-only or other-site, a 401 kind sign-in; a tank one has no seat at any more is 404.")
  public String push(@PathParam("tank") String tank, String body) {
    Seat seat = signed.seatToRecord(tank);
    if (body.getBytes(StandardCharsets.UTF_8).length > Push.MOST_BYTES) {
      throw Problem.tooLarge("a batch holds at most 262144 bytes");
    }
    JsonNode entries = Json.object(body).path("entries");
    if (!entries.isArray() || entries.size() > Push.MOST_ENTRIES) {
      throw Problem.badRequest("a batch cannot be used", "entries", "a list of at most 500 entries");
    }
    List<JsonNode> list = new ArrayList<>();
    entries.forEach(list::add);
    Push.Result result =
        new Push(journals)
            .take(key(seat), list, keeper -> people.hasBelonged(seat.household(), keeper), Instant.now());
    hints.committed(key(seat), result.position().head());
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode answers = answer.putArray("answers");
    result.answers().forEach(one -> write(one, answers.addObject()));
    return Json.ended(answer, result.position()).toString();
  }

  @GET
  @Path("/{tank}/entries")
  @Operation(
      summary = "Pull the entries after a place, in order, at most 500 a page",
      description = "checksum is what the page adds up to, as described under checksums.")
  public String pull(
      @PathParam("tank") String tank,
      @QueryParam("after") @DefaultValue("0") String after,
      @QueryParam("limit") @DefaultValue("500") String limit) {
    Seat seat = signed.seat(tank);
    long from = Parameter.whole("after", after, 0, Long.MAX_VALUE);
    int most = (int) Parameter.whole("limit", limit, 1, Pull.MOST_ENTRIES);
    Page page = new Pull(journals).after(key(seat), from, most);
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode entries = answer.putArray("entries");
    long last = from;
    for (Stored stored : page.entries()) {
      entries.addRawValue(new RawValue(inItsPlace(stored)));
      last = stored.seq();
    }
    answer.put("more", last < page.position().head() && !page.entries().isEmpty());
    answer.put("checksum", page.checksum());
    return Json.ended(answer, page.position()).toString();
  }

  /** The text as it was kept, which is one JSON object and knows nothing of its place, with the server's word at its end. */
  private static String inItsPlace(Stored stored) {
    String written = stored.written();
    return written.substring(0, written.length() - 1) + ",\"seq\":" + stored.seq() + ",\"receivedAt\":\"" + stored.receivedAt() + "\"}";
  }

  /** Everyone whose name may stand at an entry; of those who may record now, also when their phones were last heard of. */
  private void write(List<Member> household, ArrayNode keepers) {
    List<String> recording =
        household.stream().filter(one -> one.belongs() && one.role().mayRecord()).map(one -> one.keeper().id()).toList();
    Map<String, Instant> seen = sessions.lastSeen(recording);
    for (Member member : household) {
      ObjectNode one = keepers.addObject().put("id", member.keeper().id()).put("name", member.keeper().name());
      if (recording.contains(member.keeper().id())) {
        Instant last = seen.get(member.keeper().id());
        one.put("seenAt", last == null ? null : last.toString());
      }
    }
  }

  private static void write(Answer one, ObjectNode answer) {
    answer.put("id", one.id()).put("outcome", SessionCookies.lower(one.outcome().name()));
    if (one.seq() != null) {
      answer.put("seq", one.seq());
    }
    if (!one.fields().isEmpty()) {
      ArrayNode fields = answer.putArray("fields");
      one.fields().forEach(fields::add);
    }
    if (!one.faults().isEmpty()) {
      ObjectNode problem = answer.putObject("problem");
      problem.put("type", "about:blank").put("kind", "bad-fields").put("title", "some fields cannot be used").put("status", 422);
      ArrayNode errors = problem.putArray("errors");
      one.faults().forEach(fault -> errors.addObject().put("field", fault.field()).put("takes", fault.takes()));
    }
  }

  private static TankKey key(Seat seat) {
    return new TankKey(seat.household(), seat.tank());
  }
}
