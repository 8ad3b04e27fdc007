package provender.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.photo.Snapshot;

@QuarkusTest
class PhotosTest {
  private static final String OTHER_TANK = "tannelwick-market";

  @Test
  void a_photo_comes_after_its_entry_stays_the_first_one_and_is_seen_by_the_household_alone() throws Exception {
    String id = UUID.randomUUID().toString();
    put(id, Snapshot.jpeg(40, 30)).then().statusCode(409).body("kind", equalTo("entry-missing"));
    push(id, "photo");
    put(id, Snapshot.withExif(Snapshot.jpeg(40, 30), "53.0N 8.8E")).then().statusCode(201).body("outcome", equalTo("kept"));
    put(id, Snapshot.jpeg(80, 80)).then().statusCode(200).body("outcome", equalTo("known"));

    Response shown = People.GUEST.asks().get(path(id));
    shown.then().statusCode(200).contentType("image/jpeg").header("Cache-Control", "no-store").header("X-Content-Type-Options", "nosniff");
    byte[] jpeg = shown.asByteArray();
    assertThat(ImageIO.read(new ByteArrayInputStream(jpeg)).getWidth()).isEqualTo(40);
    assertThat(new String(jpeg, StandardCharsets.ISO_8859_1)).doesNotContain("53.0N");

    People.OTHER_STEWARD.asks().get(path(id)).then().statusCode(404);
    People.OTHER_STEWARD.asks().get("/api/v1/tanks/" + OTHER_TANK + "/photos/" + id).then().statusCode(404);
    People.OTHER_STEWARD.asks().contentType("image/jpeg").body(jpeg).put("/api/v1/tanks/" + OTHER_TANK + "/photos/" + id).then().statusCode(409);
  }

  @Test
  void only_an_entry_of_its_own_kind_takes_a_picture() {
    String id = UUID.randomUUID().toString();
    push(id, "feeding");
    put(id, Snapshot.jpeg(40, 30)).then().statusCode(409);
  }

  @Test
  void what_is_no_picture_is_refused_by_its_content() {
    String id = UUID.randomUUID().toString();
    push(id, "photo");
    put(id, "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8)).then().statusCode(400)
        .body("errors[0].field", equalTo("body")).body("errors[0].takes", equalTo("a JPEG picture"));
    People.KEEPER.asks().contentType("image/svg+xml").body("<svg/>").put(path(id)).then().statusCode(415);
    put(id, new byte[1_100_000]).then().statusCode(413);
    People.KEEPER.asks().get(path(id)).then().statusCode(404);
  }

  @Test
  void an_erased_picture_is_gone_from_every_way_out_and_does_not_come_back_and_its_entry_stays() {
    String id = UUID.randomUUID().toString();
    push(id, "photo");
    put(id, Snapshot.jpeg(40, 30)).then().statusCode(201);
    People.KEEPER.asks().delete(path(id)).then().statusCode(204);
    People.KEEPER.asks().delete(path(id)).then().statusCode(204);

    People.KEEPER.asks().get(path(id)).then().statusCode(404);
    put(id, Snapshot.jpeg(40, 30)).then().statusCode(410).body("kind", equalTo("picture-erased"));
    byte[] whole = People.GUEST.asks().get("/api/v1/tanks/" + People.TANK + "/export.zip").asByteArray();
    assertThat(new String(whole, StandardCharsets.ISO_8859_1)).doesNotContain("photos/" + id);
    assertThat(People.GUEST.asks().get("/api/v1/tanks/" + People.TANK + "/export.jsonl").asString()).contains(id);
  }

  @Test
  void a_picture_that_is_still_on_its_way_when_it_is_erased_is_turned_away() {
    String id = UUID.randomUUID().toString();
    People.KEEPER.asks().delete(path(id)).then().statusCode(409).body("kind", equalTo("entry-missing"));
    push(id, "photo");
    People.KEEPER.asks().delete(path(id)).then().statusCode(204);
    put(id, Snapshot.jpeg(40, 30)).then().statusCode(410);
  }

  @Test
  void only_whoever_took_a_picture_or_a_steward_erases_it() {
    String id = UUID.randomUUID().toString();
    push(id, "photo");
    put(id, Snapshot.jpeg(40, 30)).then().statusCode(201);
    People.KEEPER.someoneNew().asks().delete(path(id)).then().statusCode(403).body("kind", equalTo("picture-of-another"));
    People.GUEST.asks().delete(path(id)).then().statusCode(403).body("kind", equalTo("guest"));
    People.OTHER_STEWARD.asks().delete(path(id)).then().statusCode(404);
    People.KEEPER.asks().get(path(id)).then().statusCode(200);
    People.STEWARD.asks().delete(path(id)).then().statusCode(204);
  }

  @Test
  void a_journal_leaves_with_its_photos_in_one_file() throws Exception {
    String id = UUID.randomUUID().toString();
    push(id, "photo");
    put(id, Snapshot.jpeg(50, 20)).then().statusCode(201);
    Response whole = People.GUEST.asks().get("/api/v1/tanks/" + People.TANK + "/export.zip");
    whole.then().statusCode(200).contentType("application/zip");

    Map<String, byte[]> files = new HashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(whole.asByteArray()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        files.put(entry.getName(), zip.readAllBytes());
      }
    }
    assertThat(new String(files.get("journal.jsonl"), StandardCharsets.UTF_8)).contains(id);
    assertThat(ImageIO.read(new ByteArrayInputStream(files.get("photos/" + id + ".jpg"))).getWidth()).isEqualTo(50);
  }

  private static void push(String id, String kind) {
    ObjectNode entry = Phone.feeding(id, People.TANK, UUID.randomUUID().toString(), 1, "teo").put("kind", kind);
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + entry + "]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(200).body("answers[0].outcome", equalTo("accepted"));
  }

  private static Response put(String id, byte[] sent) {
    return People.KEEPER.asks().contentType("image/jpeg").body(sent).put(path(id));
  }

  private static String path(String id) {
    return "/api/v1/tanks/" + People.TANK + "/photos/" + id;
  }
}
