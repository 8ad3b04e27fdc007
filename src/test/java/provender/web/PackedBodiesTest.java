package provender.web;

import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.UUID;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.Phone;

/** What phones send packed: RFC 9110, Content-Encoding, with gzip (RFC 1952). */
@QuarkusTest
class PackedBodiesTest {
  private static final String ENTRIES = "/api/v1/tanks/" + People.TANK + "/entries";

  @Test
  void a_packed_batch_is_kept_and_is_the_same_as_one_that_was_not_packed() throws IOException {
    String batch = batch();
    sent("gzip", packed(batch)).then().statusCode(200).body("answers[0].outcome", equalTo("accepted"));
    People.KEEPER.asks().contentType("application/json").body(batch).post(ENTRIES).then()
        .statusCode(200).body("answers[0].outcome", equalTo("duplicate"));
  }

  @Test
  void however_little_it_was_packed_to_more_than_a_request_may_hold_is_refused() throws IOException {
    byte[] bomb = packed("{\"entries\":[]" + " ".repeat(200_000_000) + "}");
    sent("gzip", bomb).then().statusCode(413).contentType(Problem.MEDIA_TYPE).body("kind", equalTo("too-large"));
  }

  @Test
  void unpacked_it_is_held_to_the_length_of_a_batch() throws IOException {
    sent("gzip", packed("{\"entries\":[\"" + "x".repeat(300_000) + "\"]}")).then().statusCode(413);
  }

  @Test
  void what_was_cut_off_or_was_never_packed_is_refused_by_name() throws IOException {
    byte[] whole = packed(batch());
    for (int length : new int[] {0, 1, 9, 10, whole.length / 2, whole.length - 9, whole.length - 1}) {
      sent("gzip", Arrays.copyOf(whole, length)).then().statusCode(400).body("errors[0].field", equalTo("body"));
    }
    sent("gzip", batch().getBytes(StandardCharsets.UTF_8)).then().statusCode(400).body("errors[0].field", equalTo("body"));
  }

  @ParameterizedTest
  @CsvSource({"br", "deflate", "zstd", "'gzip, gzip'", "x"})
  void packed_in_another_way_it_is_refused_by_name(String coding) throws IOException {
    sent(coding, packed(batch())).then().statusCode(415).contentType(Problem.MEDIA_TYPE)
        .body("errors[0].field", equalTo("Content-Encoding")).body("errors[0].takes", equalTo("gzip or nothing"));
  }

  @ParameterizedTest
  @CsvSource({"GZIP", "x-gzip"})
  void the_name_of_the_packing_is_read_as_the_standard_has_it(String coding) throws IOException {
    sent(coding, packed(batch())).then().statusCode(200);
  }

  private static Response sent(String coding, byte[] body) {
    return People.KEEPER.asks().contentType("application/json").header("Content-Encoding", coding).body(body).post(ENTRIES);
  }

  private static String batch() {
    return "{\"entries\":[" + Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "teo") + "]}";
  }

  private static byte[] packed(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
      packing.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.toByteArray();
  }
}
