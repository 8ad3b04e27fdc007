package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.net.URL;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import provender.vectors.Vectors;

/** The calculations under a hail of spoilt requests; -Dfuzz.requests and -Dfuzz.seed change how many and which. */
@QuarkusTest
class FuzzedRequestsTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int REQUESTS = Integer.getInteger("fuzz.requests", 600);
  private static final String[] SPOILT = {"null", "true", "\"\"", "\"NaN\"", "-1", "1e400", "-1e400", "1e308", "0", "[]", "{}", "[[[]]]", "\"\\u0000\""};

  @TestHTTPResource("/api/v1/calc/")
  URL calculations;

  @Test
  void no_spoilt_request_breaks_the_server_and_none_is_answered_with_nonsense() throws Exception {
    long seed = Long.getLong("fuzz.seed", System.nanoTime());
    List<Vectors.Vector> vectors = Vectors.all();
    HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    List<String> wrong = AtOnce.wrongs(REQUESTS, number -> wrongWith(client, vectors, new Random(seed + number)));
    assertThat(wrong).as("seed " + seed).isEmpty();
    given().get("/q/health/ready").then().statusCode(200);
  }

  private String wrongWith(HttpClient client, List<Vectors.Vector> vectors, Random random) {
    Vectors.Vector vector = vectors.get(random.nextInt(vectors.size()));
    String body = spoilt(JSON.valueToTree(vector.input()), random);
    HttpRequest request = HttpRequest.newBuilder(URI.create(calculations + vector.call()))
        .header("Content-Type", "application/json").POST(BodyPublishers.ofString(body)).build();
    HttpResponse<String> answer = client.sendAsync(request, BodyHandlers.ofString()).join();
    boolean sound = answer.statusCode() == 400
        ? answer.body().contains("\"field\"")
        : answer.statusCode() == 200 && !answer.body().contains("NaN") && !answer.body().contains("Infinity");
    return sound ? "" : answer.statusCode() + " " + vector.call() + " " + body + " -> " + answer.body();
  }

  private static String spoilt(JsonNode input, Random random) {
    ObjectNode body = (ObjectNode) input.deepCopy();
    List<String> names = new ArrayList<>();
    body.fieldNames().forEachRemaining(names::add);
    String text = body.toString();
    String field = names.get(random.nextInt(names.size()));
    String value = SPOILT[random.nextInt(SPOILT.length)];
    return switch (random.nextInt(5)) {
      case 0 -> text.substring(0, random.nextInt(text.length()));
      case 1 -> body.without(field).toString();
      case 2 -> text.replaceFirst("\"" + field + "\":[^,{}\\[\\]]+", "\"" + field + "\":" + value.replace("\\", "\\\\"));
      case 3 -> "{\"unheardOf\":" + value + "," + text.substring(1);
      default -> text.replaceFirst("\\d+(\\.\\d+)?", value.replace("\\", "\\\\"));
    };
  }
}
