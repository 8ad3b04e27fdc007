package provender.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jspecify.annotations.Nullable;
import provender.people.Seat;
import provender.sync.Answer;
import provender.sync.JournalStore;
import provender.sync.Push;
import provender.sync.TankKey;

/** A journal that was taken away, brought back or brought to another server. */
@Path("/api/v1/tanks/{tank}/import")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class ImportResource {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JournalStore journals;
  private final Signed signed;

  ImportResource(JournalStore journals, Signed signed) {
    this.journals = journals;
    this.signed = signed;
  }

  /** A line that could be read, and its number in the file, from 1. */
  private record Line(int number, JsonNode entry) {}

  @POST
  @Consumes({"application/jsonl", MediaType.TEXT_PLAIN, MediaType.APPLICATION_JSON})
  @Operation(
      summary = "Import a journal from JSON Lines, as the export gives it",
      description =
          "For stewards. Each line is answered for itself: known entries are passed over, so importing a file twice changes nothing; a line that"
              + " cannot be used is named by its number with what it takes, and the others are kept all the same. Lines of another tank are"
              + " taken into this one.")
  public String take(@PathParam("tank") String tank, String body) {
    Seat seat = signed.seatToRecord(tank);
    signed.stewardOf(seat.household());
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode refused = answer.putArray("refused");
    List<Line> lines = read(body, tank, refused);
    int accepted = 0;
    int known = 0;
    for (int from = 0; from < lines.size(); from += Push.MOST_ENTRIES) {
      List<Line> batch = lines.subList(from, Math.min(lines.size(), from + Push.MOST_ENTRIES));
      List<JsonNode> entries = batch.stream().map(Line::entry).toList();
      // A steward vouches for the file: those who wrote it may have left, or may live on another server.
      Push.Result result = new Push(journals).take(new TankKey(seat.household(), tank), entries, keeper -> true, Instant.now());
      for (int i = 0; i < batch.size(); i++) {
        Answer one = result.answers().get(i);
        switch (one.outcome()) {
          case ACCEPTED -> accepted++;
          case DUPLICATE -> known++;
          default -> refuse(refused, batch.get(i).number(), one.id(), one.faults());
        }
      }
    }
    return answer.put("accepted", accepted).put("known", known).toString();
  }

  private static List<Line> read(String body, String tank, ArrayNode refused) {
    List<Line> lines = new ArrayList<>();
    String[] texts = body.split("\n", -1);
    for (int i = 0; i < texts.length; i++) {
      if (!texts[i].isBlank()) {
        JsonNode entry = parsed(texts[i]);
        if (entry instanceof ObjectNode object) {
          object.remove(List.of("seq", "receivedAt"));
          lines.add(new Line(i + 1, object.put("tank", tank)));
        } else {
          refuse(refused, i + 1, "", List.of(new Answer.Fault("line", "a JSON object on one line")));
        }
      }
    }
    return lines;
  }

  private static @Nullable JsonNode parsed(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException broken) {
      return null;
    }
  }

  private static void refuse(ArrayNode refused, int line, String id, List<Answer.Fault> faults) {
    ObjectNode one = refused.addObject().put("line", line).put("id", id);
    ArrayNode errors = one.putArray("errors");
    faults.forEach(fault -> errors.addObject().put("field", fault.field()).put("takes", fault.takes()));
  }
}
