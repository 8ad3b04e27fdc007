package provender.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.report.JournalCsv;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Page;
import provender.sync.JournalStore.Stored;
import provender.sync.Pull;
import provender.sync.TankKey;

/** A journal whole, to take away: what a keeper wrote belongs to them. */
@Path("/api/v1/tanks/{tank}")
@Singleton
class ExportResource {
  private static final String JSON_LINES = "application/jsonl";
  private static final String CSV = "text/csv";

  private final JournalStore journals;
  private final Signed signed;

  ExportResource(JournalStore journals, Signed signed) {
    this.journals = journals;
    this.signed = signed;
  }

  /** Is told of each entry in its order. */
  private interface Taker {
    void takes(ObjectNode entry) throws IOException;
  }

  @GET
  @Path("/export.jsonl")
  @Produces(JSON_LINES)
  @Operation(summary = "The whole journal as JSON Lines, one entry a line, in its order; importing the lines again changes nothing")
  public Response lines(@PathParam("tank") String tank) throws IOException {
    StringBuilder lines = new StringBuilder();
    each(tank, entry -> lines.append(entry).append('\n'));
    return attached(lines.toString().getBytes(StandardCharsets.UTF_8), "journal.jsonl");
  }

  @GET
  @Path("/export.csv")
  @Produces(CSV)
  @Operation(
      summary = "The whole journal as a table (RFC 4180)",
      description =
          "A line for each food of a feeding and one for every other entry; grams as numbers, times as ISO 8601 with their offset. Text that a"
              + " spreadsheet would run as a formula begins with an apostrophe.")
  public Response table(@PathParam("tank") String tank) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JournalCsv csv = new JournalCsv(out)) {
      each(tank, csv::add);
    }
    return attached(out.toByteArray(), "journal.csv");
  }

  private void each(String tank, Taker taker) throws IOException {
    Seat seat = signed.seat(tank);
    TankKey key = new TankKey(seat.household(), seat.tank());
    Page page = new Pull(journals).after(key, 0, Pull.MOST_ENTRIES);
    while (!page.entries().isEmpty()) {
      long after = 0;
      for (Stored stored : page.entries()) {
        ObjectNode entry = (ObjectNode) Json.object(stored.written());
        taker.takes(entry.put("seq", stored.seq()).put("receivedAt", stored.receivedAt().toString()));
        after = stored.seq();
      }
      page = new Pull(journals).after(key, after, Pull.MOST_ENTRIES);
    }
  }

  private static Response attached(byte[] file, String name) {
    return Response.ok(file).header("Content-Disposition", "attachment; filename=\"" + name + "\"").build();
  }
}
