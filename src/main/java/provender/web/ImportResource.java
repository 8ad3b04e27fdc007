package provender.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.sync.Import;
import provender.sync.JournalStore;
import provender.sync.TankKey;

/** A journal brought back from its JSON Lines. */
@Path("/api/v1/tanks/{tank}/import")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class ImportResource {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final JournalStore journals;
  private final Signed signed;
  private final Hints hints;

  ImportResource(JournalStore journals, Signed signed, Hints hints) {
    this.journals = journals;
    this.signed = signed;
    this.hints = hints;
  }

  @POST
  @Consumes("application/jsonl")
  @Operation(
      summary = "Bring in a journal saved as JSON Lines; stewards only",
      description =
          "One entry a line, as export.jsonl gives them; at most 64 MiB. Entries are known by their id, so the same file again changes"
              + " nothing. Every line that cannot be used is listed by its number with the reason, and the others are kept. With"
              + " adopt=true entries of another tank become this tank's: for a journal that moves to another server.")
  public String bringIn(
      @PathParam("tank") String tank, @QueryParam("adopt") @DefaultValue("false") boolean adopt, InputStream lines) {
    Seat seat = signed.seat(tank);
    signed.stewardOf(seat.household());
    TankKey key = new TankKey(seat.household(), seat.tank());
    Import run = new Import(journals, key, adopt, Instant.now());
    try (BufferedReader reader = new BufferedReader(new InputStreamReader(lines, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        run.line(line);
      }
    } catch (IOException cutShort) {
      throw new UncheckedIOException(cutShort);
    }
    Import.Result result = run.end();
    hints.committed(key, journals.position(key).head());
    return written(result, journals.position(key)).toString();
  }

  private static ObjectNode written(Import.Result result, JournalStore.Position position) {
    ObjectNode answer = JSON.createObjectNode();
    answer.put("accepted", result.accepted()).put("duplicate", result.duplicate()).put("conflicted", result.conflicted());
    ArrayNode refused = answer.putArray("refused");
    for (Import.Refused one : result.refused()) {
      ObjectNode line = refused.addObject().put("line", one.line()).put("id", one.id());
      ArrayNode errors = line.putArray("errors");
      one.faults().forEach(fault -> errors.addObject().put("field", fault.field()).put("takes", fault.takes()));
    }
    return Json.ended(answer, position);
  }
}
