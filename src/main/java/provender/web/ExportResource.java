package provender.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Page;
import provender.sync.JournalStore.Stored;
import provender.sync.Pull;
import provender.sync.TankKey;

/** A journal whole, to take away: what a keeper wrote belongs to them. */
@Path("/api/v1/tanks/{tank}/export.jsonl")
@Singleton
class ExportResource {
  private static final String JSON_LINES = "application/jsonl";

  private final JournalStore journals;
  private final Signed signed;

  ExportResource(JournalStore journals, Signed signed) {
    this.journals = journals;
    this.signed = signed;
  }

  @GET
  @Produces(JSON_LINES)
  @Operation(summary = "The whole journal as JSON Lines, one entry a line, in its order; pushing the lines again changes nothing")
  public Response export(@PathParam("tank") String tank) {
    Seat seat = signed.seat(tank);
    TankKey key = new TankKey(seat.household(), seat.tank());
    StringBuilder lines = new StringBuilder();
    long after = 0;
    Page page = new Pull(journals).after(key, after, Pull.MOST_ENTRIES);
    while (!page.entries().isEmpty()) {
      for (Stored stored : page.entries()) {
        ObjectNode entry = (ObjectNode) Json.object(stored.written());
        lines.append(entry.put("seq", stored.seq()).put("receivedAt", stored.receivedAt().toString())).append('\n');
        after = stored.seq();
      }
      page = new Pull(journals).after(key, after, Pull.MOST_ENTRIES);
    }
    return Response.ok(lines.toString().getBytes(StandardCharsets.UTF_8))
        .header("Content-Disposition", "attachment; filename=\"journal.jsonl\"")
        .build();
  }
}
