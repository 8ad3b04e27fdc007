package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@TestProfile(RatesTest.Narrow.class)
class RatesTest {
  private static final int PER_MINUTE = 60;

  /** A server that bears little. */
  public static class Narrow implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("provender.rate.perMinute", String.valueOf(PER_MINUTE), "quarkus.datasource.jdbc.url",
          "jdbc:h2:mem:narrow;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
    }
  }

  @Test
  void a_store_of_requests_empties_and_fills_up_again_evenly_and_each_has_their_own() {
    Rates rates = new Rates(PER_MINUTE);
    Instant now = Instant.parse("2026-11-25T12:00:00Z");
    for (int i = 0; i < PER_MINUTE; i++) {
      assertThat(rates.isTooMuch("one", now)).isFalse();
    }
    assertThat(rates.isTooMuch("one", now)).isTrue();
    assertThat(rates.isTooMuch("other", now)).isFalse();
    assertThat(rates.isTooMuch("one", now.plusMillis(1001))).isFalse();
    assertThat(rates.isTooMuch("one", now.plusMillis(1002))).isTrue();
    assertThat(rates.isTooMuch("one", now.minusSeconds(60))).isTrue();
  }

  @Test
  void whoever_floods_the_server_waits_and_others_do_not() {
    String flooding = session("Teo", "demo-lantern-teo");
    String calm = session("Bram", "demo-lantern-bram");
    int refused = 0;
    for (int i = 0; i < 2 * PER_MINUTE; i++) {
      refused += given().cookie(Signed.COOKIE, flooding).get("/api/v1/session").statusCode() == 429 ? 1 : 0;
    }
    assertThat(refused).isPositive();
    given().cookie(Signed.COOKIE, calm).get("/api/v1/session").then().statusCode(200);
    given().cookie(Signed.COOKIE, calm).get("/api/v1/tanks").then().statusCode(200);
  }

  @Test
  void a_household_that_sends_too_many_batches_waits_and_is_told_so() {
    String maren = session("Maren", "demo-lantern-maren");
    String ilka = session("Ilka", "demo-lantern-ilka");
    int refused = 0;
    for (int i = 0; i < 2 * PER_MINUTE; i++) {
      var answer = given().cookie(Signed.COOKIE, i % 2 == 0 ? maren : ilka).contentType(ContentType.JSON).body("{\"entries\":[]}")
          .post("/api/v1/tanks/" + People.TANK + "/entries");
      if (answer.statusCode() == 429) {
        answer.then().body("kind", equalTo("too-many"));
        refused++;
      }
    }
    assertThat(refused).isPositive();
  }

  private static String session(String name, String password) {
    return given().contentType(ContentType.JSON).body(Map.of("name", name, "password", password)).post("/api/v1/session")
        .then().statusCode(200).extract().cookie(Signed.COOKIE);
  }
}
