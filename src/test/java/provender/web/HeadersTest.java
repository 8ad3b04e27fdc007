package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import com.aayushatharva.brotli4j.decoder.Decoder;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class HeadersTest {

  @ParameterizedTest
  @ValueSource(strings = {"/", "/app.js", "/api/v1/tanks", "/shared/reference.json", "/no-such-page"})
  void every_answer_forbids_framing_sniffing_and_foreign_scripts(String path) {
    given().get(path).then()
        .header("Content-Security-Policy", allOf(
            containsString("default-src 'self'"), containsString("frame-ancestors 'none'"),
            containsString("object-src 'none'"), containsString("base-uri 'none'"),
            not(containsString("unsafe-inline")), not(containsString("unsafe-eval"))))
        .header("X-Content-Type-Options", equalTo("nosniff"))
        .header("Referrer-Policy", equalTo("no-referrer"))
        .header("Permissions-Policy", containsString("geolocation=()"));
  }

  @Test
  void answers_of_the_api_are_never_kept_by_a_cache() {
    given().get("/api/v1/tanks").then().header("Cache-Control", equalTo("no-store"));
  }

  @Test
  void a_file_that_a_phone_holds_is_not_sent_again_and_one_of_another_version_is() {
    String tag = given().get("/shared/reference.json").then().statusCode(200).extract().header("ETag");
    given().header("If-None-Match", tag).get("/shared/reference.json").then().statusCode(304).header("ETag", equalTo(tag));
    given().header("If-None-Match", "W/\"another\"").get("/shared/reference.json").then().statusCode(200);
    given().get("/sw.js").then().statusCode(200).header("ETag", equalTo(null));
  }

  @ParameterizedTest
  @CsvSource({"/, text/html", "/app.js, text/javascript", "/css/index.css, text/css", "/shared/reference.json, application/json",
      "/manifest.webmanifest, application/manifest+json"})
  void a_browser_that_takes_brotli_gets_the_same_file_smaller(String path, String type) throws IOException {
    byte[] plain = given().header("Accept-Encoding", "identity").get(path).then().statusCode(200)
        .header("Content-Type", startsWith(type)).extract().asByteArray();
    var packed = given().header("Accept-Encoding", "gzip, deflate, br, zstd").get(path).then().statusCode(200)
        .header("Content-Type", startsWith(type)).header("Content-Encoding", equalTo("br")).header("Vary", equalTo("Accept-Encoding"))
        .header("ETag", equalTo(given().get(path).header("ETag"))).header("X-Content-Type-Options", equalTo("nosniff"))
        .extract().asByteArray();
    assertThat(packed.length).isLessThan(plain.length);
    assertThat(Decoder.decompress(packed).getDecompressedData()).isEqualTo(plain);
  }

  @ParameterizedTest
  @ValueSource(strings = {"identity", "gzip", "gzip, br;q=0"})
  void a_browser_that_takes_no_brotli_gets_none(String taken) {
    given().header("Accept-Encoding", taken).get("/app.js").then().statusCode(200)
        .header("Content-Encoding", not(equalTo("br"))).body(containsString("const modules"));
  }

  @Test
  void a_request_that_another_site_made_a_browser_send_is_turned_away() {
    People.KEEPER.asks().header("Sec-Fetch-Site", "cross-site").contentType(ContentType.JSON).body("{\"entries\":[]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(403);
    People.KEEPER.asks().header("Origin", "https://elsewhere.example").contentType(ContentType.JSON).body("{\"entries\":[]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(403);
    People.KEEPER.asks().header("Sec-Fetch-Site", "same-origin").contentType(ContentType.JSON).body("{\"entries\":[]}")
        .post("/api/v1/tanks/" + People.TANK + "/entries").then().statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/../application.properties", "/..%2f..%2fetc%2fpasswd", "/%2e%2e/%2e%2e/etc/passwd", "/lib/../../../etc/passwd",
      "/application.properties", "/db/migration/V1__households_and_journal.sql"})
  void nothing_outside_the_shell_is_given_out(String path) {
    var answer = given().urlEncodingEnabled(false).get(path);
    assertThat(answer.statusCode()).isIn(400, 404);
    assertThat(answer.asString()).doesNotContain("root:", "quarkus.", "create table");
  }

  @Test
  void a_header_cannot_be_smuggled_in_through_a_name() {
    given().urlEncodingEnabled(false).get("/api/v1/tanks/x%0d%0aX-Smuggled:%20yes/entries").then()
        .header("X-Smuggled", equalTo(null));
  }
}
