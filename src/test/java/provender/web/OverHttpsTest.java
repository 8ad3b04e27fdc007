package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@TestProfile(OverHttpsTest.Https.class)
class OverHttpsTest {

  /** A server that phones reach over https, by a proxy that ends TLS. */
  public static class Https implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("provender.https", "true", "quarkus.datasource.jdbc.url",
          "jdbc:h2:mem:https;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
    }
  }

  @Test
  void the_session_travels_over_https_only_for_this_host_alone_and_a_plain_cookie_opens_nothing() {
    var signedIn = given().contentType(ContentType.JSON).body(Map.of("name", "Teo", "password", "demo-lantern-teo")).post("/api/v1/session");
    signedIn.then().statusCode(200).header("Strict-Transport-Security", equalTo("max-age=31536000; includeSubDomains"));
    assertThat(signedIn.header("Set-Cookie")).startsWith(Signed.COOKIE_OVER_HTTPS + "=").contains("Secure", "HttpOnly", "SameSite=Strict", "Path=/")
        .doesNotContain("Domain");

    String token = signedIn.cookie(Signed.COOKIE_OVER_HTTPS);
    given().cookie(Signed.COOKIE_OVER_HTTPS, token).get("/api/v1/session").then().statusCode(200);
    given().cookie(Signed.COOKIE, token).get("/api/v1/session").then().statusCode(401);
  }
}
