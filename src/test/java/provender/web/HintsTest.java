package provender.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URL;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import provender.Phone;

@QuarkusTest
class HintsTest {
  @TestHTTPResource("/api/v1/tanks/" + People.TANK + "/hints")
  URL line;

  @Test
  void a_listener_hears_the_head_at_once_and_of_another_phones_feeding_within_two_seconds() throws Exception {
    HttpRequest listen = HttpRequest.newBuilder(URI.create(line.toString())).header("Cookie", People.GUEST.cookie()).build();
    try (var hints = new BufferedReader(new InputStreamReader(
        HttpClient.newHttpClient().send(listen, BodyHandlers.ofInputStream()).body()))) {
      long before = head(hints);
      Instant sent = Instant.now();
      People.KEEPER.asks().contentType(ContentType.JSON)
          .body("{\"entries\":[" + Phone.feeding(UUID.randomUUID().toString(), People.TANK, UUID.randomUUID().toString(), 1, "teo") + "]}")
          .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(200);
      assertThat(head(hints)).isGreaterThan(before);
      assertThat(Duration.between(sent, Instant.now())).isLessThan(Duration.ofSeconds(2));
    }
  }

  private static long head(BufferedReader hints) throws Exception {
    String text = hints.readLine();
    while (!text.startsWith("data:")) {
      text = hints.readLine();
    }
    assertThat(text).contains("\"tank\":\"" + People.TANK + "\"");
    return Long.parseLong(text.replaceAll(".*\"head\":(\\d+).*", "$1"));
  }
}
