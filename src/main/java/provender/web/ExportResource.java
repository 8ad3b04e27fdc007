package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.photo.PhotoStore;
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
  private static final String ZIP = "application/zip";
  private static final List<String> FIRST_COLUMNS =
      List.of("seq", "happenedAt", "zone", "kind", "by", "id", "v", "device", "deviceSeq", "recordedAt", "receivedAt", "tank");

  private final JournalStore journals;
  private final PhotoStore photos;
  private final Signed signed;

  ExportResource(JournalStore journals, PhotoStore photos, Signed signed) {
    this.journals = journals;
    this.photos = photos;
    this.signed = signed;
  }

  @GET
  @Path("/export.jsonl")
  @Produces(JSON_LINES)
  @Operation(summary = "The whole journal as JSON Lines, one entry a line, in its order; importing the lines again changes nothing")
  public Response lines(@PathParam("tank") String tank) {
    StringBuilder lines = new StringBuilder();
    each(tank, entry -> lines.append(entry).append('\n'));
    return file(lines.toString(), "journal.jsonl");
  }

  @GET
  @Path("/export.csv")
  @Produces(CSV)
  @Operation(
      summary = "The whole journal as CSV (RFC 4180, UTF-8), one entry a row, for a spreadsheet",
      description =
          "A column for each field by its path, such as body.items.0.grams. Texts that begin with = + - @, a tab or a carriage return get"
              + " an apostrophe in front, so that no spreadsheet takes them for a formula; numbers are untouched. To bring a journal back"
              + " use the JSON Lines.")
  public Response table(@PathParam("tank") String tank) {
    Set<String> bodies = new TreeSet<>();
    each(tank, entry -> bodies.addAll(CsvTable.cells(entry).keySet()));
    Set<String> columns = new LinkedHashSet<>(FIRST_COLUMNS);
    columns.addAll(bodies);
    CsvTable table = new CsvTable(columns);
    each(tank, entry -> table.row(CsvTable.cells(entry)));
    return file(table.text(), "journal.csv");
  }

  @GET
  @Path("/export.zip")
  @Produces(ZIP)
  @Operation(
      summary = "The whole journal with its photos: journal.jsonl, and each picture as photos/ID.jpg under the id of its entry",
      description = "To bring it back, post journal.jsonl to import and put each picture to photos/ID again.")
  public Response withPhotos(@PathParam("tank") String tank) {
    Seat seat = signed.seat(tank);
    TankKey key = new TankKey(seat.household(), seat.tank());
    StringBuilder lines = new StringBuilder();
    each(tank, entry -> lines.append(entry).append('\n'));
    StreamingOutput file =
        out -> {
          try (ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, "journal.jsonl", lines.toString().getBytes(StandardCharsets.UTF_8));
            for (String id : photos.ids(key)) {
              byte[] jpeg = photos.find(key, id);
              if (jpeg != null) {
                put(zip, "photos/" + id + ".jpg", jpeg);
              }
            }
          }
        };
    return Response.ok(file).header("Content-Disposition", "attachment; filename=\"journal.zip\"").build();
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(content);
    zip.closeEntry();
  }

  private void each(String tank, Consumer<JsonNode> reader) {
    Seat seat = signed.seat(tank);
    TankKey key = new TankKey(seat.household(), seat.tank());
    long after = 0;
    for (Page page = page(key, after); !page.entries().isEmpty(); page = page(key, after)) {
      for (Stored stored : page.entries()) {
        ObjectNode entry = (ObjectNode) Json.object(stored.written());
        reader.accept(entry.put("seq", stored.seq()).put("receivedAt", stored.receivedAt().toString()));
        after = stored.seq();
      }
    }
  }

  private Page page(TankKey tank, long after) {
    return new Pull(journals).after(tank, after, Pull.MOST_ENTRIES);
  }

  private static Response file(String text, String name) {
    return Response.ok(text.getBytes(StandardCharsets.UTF_8))
        .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
        .build();
  }
}
