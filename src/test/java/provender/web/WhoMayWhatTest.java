package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.RestAssured;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.photo.Snapshot;

@QuarkusTest
class WhoMayWhatTest {
  @Test
  void everyone_may_do_exactly_what_the_table_says() {
    List<String> wrong = new ArrayList<>();
    for (Map<String, String> row : Endpoints.table()) {
      for (People who : People.values()) {
        String column = who.name().toLowerCase(Locale.ROOT);
        int allowed = Integer.parseInt(Objects.requireNonNull(row.get(column)));
        int got = ask(who, row);
        if (got != allowed) {
          wrong.add(column + " " + row.get("method") + " " + row.get("path") + ": " + got + ", not " + allowed);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void no_endpoint_is_missing_from_the_table() {
    Set<String> listed = new HashSet<>();
    Endpoints.table().forEach(row -> listed.add(row.get("method") + " " + row.get("path")));

    Map<String, Map<String, ?>> paths =
        given().accept(ContentType.JSON).get("/api/v1/openapi?format=json").then().statusCode(200).extract().path("paths");
    Set<String> offered = new HashSet<>();
    paths.forEach((path, methods) -> methods.keySet().stream()
        .filter(method -> Set.of("get", "post", "put", "delete", "patch").contains(method))
        .forEach(method -> offered.add(method.toUpperCase(Locale.ROOT) + " " + path)));
    assertThat(offered).isEqualTo(listed);
  }

  private static int ask(People who, Map<String, String> row) {
    String method = Objects.requireNonNull(row.get("method"));
    String pattern = Objects.requireNonNull(row.get("path"));
    String path = filledIn(method.equals("DELETE") ? pattern.replace("{photo}", photoOfTheSteward()) : pattern);
    String body = Endpoints.body(row);
    if (body.contains("{person}")) {
      body = body.replace("{person}", People.KEEPER.someoneNew().id());
    }
    boolean mayEndSomething = method.equals("DELETE") || pattern.endsWith("hand-over") || pattern.equals("/api/v1/session");
    var asked = mayEndSomething ? who.asksAsSomeoneNew() : who.asks();
    if (row.get("body").equals("jpeg")) {
      asked = asked.contentType("image/jpeg").body(Snapshot.jpeg(8, 8));
    } else if (!body.isEmpty()) {
      asked = asked.contentType(body.isBlank() ? "application/jsonl" : "application/json").body(body.getBytes(StandardCharsets.UTF_8));
    }
    if (path.endsWith("/hints")) {
      return statusOfALine(who, path);
    }
    return PasskeysTest.named(asked).request(method, path).statusCode();
  }

  /** Whoever and whatever may be ended is made for this one question. */
  private static String filledIn(String pattern) {
    String tank = pattern.contains("tanks-away") ? newTank() : People.TANK;
    String path = pattern.replace("{tank}", tank).replace("{photo}", UUID.randomUUID().toString()).replace("{name}", "weight").replace("{household}", People.HOUSEHOLD);
    if (path.contains("{person}")) {
      path = path.replace("{person}", People.KEEPER.someoneNew().id());
    }
    if (path.contains("{device}")) {
      String ofSomeoneElse = People.KEEPER.someoneNew().asks().get("/api/v1/session/devices").path("devices[0].id");
      path = path.replace("{device}", ofSomeoneElse);
    }
    if (path.contains("{passkey}")) {
      path = path.replace("{passkey}", PasskeysTest.make(People.KEEPER.someoneNew(), new SoftKey(PasskeysTest.origin())).path("id"));
    }
    if (path.contains("{invitation}")) {
      People.invitation(People.STEWARD, People.HOUSEHOLD, "guest");
      String open = People.STEWARD.asks().get("/api/v1/households/" + People.HOUSEHOLD + "/people").path("invitations[0].id");
      path = path.replace("{invitation}", open);
    }
    return path;
  }

  private static String photoOfTheSteward() {
    String id = UUID.randomUUID().toString();
    String entry = Phone.feeding(id, People.TANK, UUID.randomUUID().toString(), 1, "maren").put("kind", "photo").toString();
    People.STEWARD.asks().contentType(ContentType.JSON).body("{\"entries\":[" + entry + "]}").post("/api/v1/tanks/" + People.TANK + "/entries");
    return id;
  }

  private static String newTank() {
    return People.STEWARD.asks().contentType(ContentType.JSON).body("{\"name\":\"Spare tank\",\"zone\":\"Europe/Berlin\"}")
        .post("/api/v1/households/" + People.HOUSEHOLD + "/tanks").path("id");
  }

  /** The answer to this one never ends: only its beginning is read. */
  private static int statusOfALine(People who, String path) {
    HttpRequest request = HttpRequest.newBuilder(URI.create(RestAssured.baseURI + ":" + RestAssured.port + path))
        .header("Cookie", who.cookie()).build();
    HttpResponse<InputStream> answer = HttpClient.newHttpClient().sendAsync(request, HttpResponse.BodyHandlers.ofInputStream()).join();
    try (InputStream line = answer.body()) {
      return answer.statusCode();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
