package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whoever asks without end waits, and nobody else. */
@QuarkusTest
@TestProfile(RatesTest.FewRequests.class)
class RatesTest {
  private static final int FEW = 20;

  /** A server that lets an address ask a few times a minute. */
  public static class FewRequests implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("provender.rates.address", Integer.toString(FEW), "quarkus.datasource.jdbc.url",
          "jdbc:h2:mem:rates;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
    }
  }

  @Test
  void an_address_that_asks_without_end_is_told_how_long_to_wait_and_still_gets_the_app() {
    Response last = given().get("/api/v1/first-start");
    for (int i = 0; i < 3 * FEW && last.statusCode() == 200; i++) {
      last = given().get("/api/v1/first-start");
    }
    assertThat(last.statusCode()).isEqualTo(429);
    assertThat(last.<String>path("kind")).isEqualTo("too-many");
    assertThat(Integer.parseInt(last.header("Retry-After"))).isBetween(1, 60);
    given().get("/app.js").then().statusCode(200);
  }

  @Test
  void one_person_who_asks_too_much_waits_and_another_does_not() {
    Rates rates = new Rates(FEW, FEW, FEW);
    for (int i = 0; i < FEW; i++) {
      rates.person("ilka");
    }
    assertThatThrownBy(() -> rates.person("ilka")).isInstanceOf(Problem.class).hasMessageContaining("person");
    rates.person("teo");
    rates.household("ilka");
  }

  @Test
  void one_household_that_is_asked_about_too_much_waits_and_another_does_not() {
    Rates rates = new Rates(FEW, FEW, FEW);
    for (int i = 0; i < FEW; i++) {
      rates.household("quernhaven");
    }
    assertThatThrownBy(() -> rates.household("quernhaven")).isInstanceOf(Problem.class).hasMessageContaining("household");
    rates.household("tannelwick");
  }
}
