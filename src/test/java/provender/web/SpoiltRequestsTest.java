package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * Every endpoint there is under a hail of spoilt bodies, ids, queries and headers, from everyone; -Dfuzz.requests and -Dfuzz.seed change
 * how many and which. {@link FuzzedRequestsTest} does the same to each calculation in depth.
 */
@QuarkusTest
class SpoiltRequestsTest {
  private static final int REQUESTS = Integer.getInteger("fuzz.requests", 600);
  private static final String UNKNOWN = "\"unheardOf\"";
  private static final List<String> IDS = List.of("x", "%00", "%25", "..%2f..%2fetc", "%27%20or%201=1", "*", "%F0%9F%90%9F", "a".repeat(5000), "-1", "%0d%0aSet-Cookie:%20a=b");
  private static final List<String> VALUES = List.of("null", "true", "7", "-1e308", "[]", "{}", "[[[[]]]]", "[null]", "{\"a\":{\"a\":{}}}");
  private static final List<String> QUERIES = List.of("after=-1", "after=x", "limit=0", "limit=999999999", "limit=1e9", "size=-5", "say=xx", "adopt=maybe", "after=9223372036854775808", "%00=%00", "zone=Nowhere%2FAtAll");
  private static final List<String> TYPES = List.of("text/plain", "application/xml", "multipart/form-data", "application/json;charset=utf-7", "image/svg+xml", "nonsense");

  @Test
  void no_endpoint_breaks_and_none_takes_what_it_should_not() throws Exception {
    long seed = Long.getLong("fuzz.seed", System.nanoTime());
    List<Map<String, String>> rows = Endpoints.table().stream().filter(row -> !Objects.requireNonNull(row.get("path")).endsWith("/hints")).toList();
    for (People one : People.values()) {
      one.asks();
    }
    assertThat(AtOnce.wrongs(REQUESTS, number -> wrongWith(rows, new Random(seed + number)))).as("seed " + seed).isEmpty();
    given().get("/q/health/ready").then().statusCode(200);
  }

  private static String wrongWith(List<Map<String, String>> rows, Random random) {
    Map<String, String> row = one(rows, random);
    String method = Objects.requireNonNull(row.get("method"));
    String pattern = Objects.requireNonNull(row.get("path"));
    boolean endsSomething = method.equals("DELETE") && pattern.startsWith("/api/v1/session");
    RequestSpecification asked = (endsSomething ? given() : one(List.of(People.values()), random).asks()).urlEncodingEnabled(false).redirects().follow(false);
    String path = filledIn(pattern, random) + (random.nextInt(3) == 0 ? "?" + one(QUERIES, random) : "");
    String good = Endpoints.body(row).replace("Teo", "Nobody at all").replace("{person}", "nobody");
    String body = spoilt(good, random);
    boolean wrongType = random.nextInt(6) == 0;
    if (!body.isBlank()) {
      asked = asked.contentType(wrongType ? one(TYPES, random) : "application/json").body(body.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    if (random.nextInt(8) == 0) {
      asked = asked.header(AppVersion.HEADER, one(List.of("x", "-1", "1e9", "1"), random));
    }
    Response answer = asked.request(method, path);
    boolean taken = answer.statusCode() < 300 && !body.isBlank() && !body.equals(good) && !body.contains(UNKNOWN)
        && !answer.asString().contains("\"refused\"");
    boolean broken = answer.statusCode() >= 500 || answer.statusCode() >= 300 && answer.statusCode() < 400;
    boolean says = answer.statusCode() >= 400 && answer.asString().contains("Exception");
    return broken || taken || says ? method + " " + path + " " + body + " -> " + answer.statusCode() + " " + answer.asString() : "";
  }

  /** Ids that open nothing; those of other households are {@link ForeignIdsTest}'s, and those of one's own would end what other tests need. */
  private static String filledIn(String pattern, Random random) {
    String path = pattern.replace("{household}", random.nextBoolean() ? People.HOUSEHOLD : "tannelwick").replace("{name}", "weight");
    if (!path.contains("tanks-away") && random.nextBoolean()) {
      path = path.replace("{tank}", People.TANK);
    }
    while (path.contains("{")) {
      String id = random.nextInt(3) == 0 ? UUID.randomUUID().toString() : one(IDS, random);
      path = path.replaceFirst("\\{[a-z]+}", id);
    }
    return path;
  }

  /** Cut, or with a value of another kind, which no endpoint may take; or with a field nobody knows, which may be passed over. */
  private static String spoilt(String body, Random random) {
    if (body.isBlank()) {
      return "";
    }
    return switch (random.nextInt(3)) {
      case 0 -> body.substring(0, 1 + random.nextInt(body.length() - 1));
      case 1 -> "{" + UNKNOWN + ":" + one(VALUES, random) + "," + body.substring(1);
      default -> body.replaceFirst(":(\"[^\"]*\"|[^,{}]+|\\{})", ":" + one(VALUES.subList(3, VALUES.size()), random));
    };
  }

  private static <T> T one(List<T> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }
}
