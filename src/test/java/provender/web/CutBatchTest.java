package provender.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;

/** Batches that arrive in part, and batches with something in them that nobody could use. */
@QuarkusTest
class CutBatchTest {
  @TestHTTPResource("/")
  URL server;

  private String tank = "";

  @BeforeEach
  void furnish() {
    tank = People.STEWARD.asks().contentType(ContentType.JSON)
        .body("{\"name\":\"Cut\",\"zone\":\"Europe/Berlin\"}").post("/api/v1/households/quernhaven/tanks").path("id");
  }

  @Test
  void a_batch_cut_at_any_byte_leaves_nothing_and_comes_whole_the_next_time() throws Exception {
    byte[] batch = ("{\"entries\":[" + feeding() + "," + feeding() + "]}").getBytes(StandardCharsets.UTF_8);
    People.KEEPER.asks();
    assertThat(AtOnce.wrongs(batch.length, cut -> {
      hangUpAfter(Arrays.copyOf(batch, cut), batch.length);
      int status = cut == 0 ? 400
          : People.KEEPER.asks().contentType(ContentType.JSON).body(Arrays.copyOf(batch, cut)).post(path()).statusCode();
      return status == 400 ? "" : "cut at " + cut + ": " + status;
    })).isEmpty();
    assertThat(head()).isZero();
    People.KEEPER.asks().contentType(ContentType.JSON).body(batch).post(path()).then()
        .body("answers.outcome", equalTo(List.of("accepted", "accepted"))).body("head", equalTo(2));
  }

  @Test
  void a_poisoned_entry_stands_in_nobodys_way() {
    ObjectNode good = feeding();
    List<String> poison = List.of("null", "7", "\"entry\"", "[]", "{}", "{\"id\":null}", feeding().put("body", "text").toString(),
        feeding().put("v", 1e300).toString(), feeding().put("deviceSeq", 1.5).toString(), feeding().put("happenedAt", "x".repeat(5000)).toString(),
        feeding().put("note", "y".repeat(70_000)).toString());
    for (String bad : poison) {
      People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + bad + "," + feeding() + "]}").post(path()).then()
          .statusCode(200).body("answers.outcome", equalTo(List.of("refused", "accepted")));
    }
    People.KEEPER.asks().contentType(ContentType.JSON).body("{\"entries\":[" + good + "," + good + "]}").post(path()).then()
        .body("answers.outcome", equalTo(List.of("accepted", "duplicate")));
    assertThat(head()).isEqualTo(poison.size() + 1);
  }

  /** As a phone does that loses its network in mid-sentence. */
  private void hangUpAfter(byte[] sent, int promised) {
    try (Socket socket = new Socket("127.0.0.1", server.getPort()); OutputStream out = socket.getOutputStream()) {
      out.write(("POST " + path() + " HTTP/1.1\r\nHost: 127.0.0.1:" + server.getPort() + "\r\nCookie: " + People.KEEPER.cookie()
          + "\r\nContent-Type: application/json\r\nContent-Length: " + promised + "\r\n\r\n").getBytes(StandardCharsets.UTF_8));
      out.write(sent);
    } catch (IOException unreachable) {
      throw new UncheckedIOException(unreachable);
    }
  }

  private int head() {
    return People.KEEPER.asks().get(path()).path("head");
  }

  private String path() {
    return "/api/v1/tanks/" + tank + "/entries";
  }

  private ObjectNode feeding() {
    return Phone.feeding(UUID.randomUUID().toString(), tank, UUID.randomUUID().toString(), 1, "teo");
  }
}
