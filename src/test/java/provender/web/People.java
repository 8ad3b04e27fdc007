package provender.web;

import static io.restassured.RestAssured.given;

import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.util.Map;

/** The demo's keepers as callers: each signs in and speaks with their own cookie. */
enum People {
  STRANGER("", ""),
  GUEST("Harbour desk", "demo-lantern-desk"),
  KEEPER("Teo", "demo-lantern-teo"),
  STEWARD("Maren", "demo-lantern-maren"),
  OTHER_KEEPER("Bram", "demo-lantern-bram"),
  OTHER_STEWARD("Sunniva", "demo-lantern-sunniva");

  static final String TANK = "quernhaven-hall";

  private final String name;
  private final String password;
  private String session = "";

  People(String name, String password) {
    this.name = name;
    this.password = password;
  }

  /** With a session that lasts for the whole run; hashing a password takes its time. */
  RequestSpecification asks() {
    if (this == STRANGER) {
      return given();
    }
    if (session.isEmpty()) {
      session = newSession();
    }
    return given().cookie(Signed.COOKIE, session);
  }

  /** The header that says who asks, for a client of another kind. */
  String cookie() {
    asks();
    return Signed.COOKIE + "=" + session;
  }

  RequestSpecification asksInANewSession() {
    return this == STRANGER ? given() : given().cookie(Signed.COOKIE, newSession());
  }

  String newSession() {
    return given()
        .contentType(ContentType.JSON)
        .body(Map.of("name", name, "password", password))
        .post("/api/v1/session")
        .then()
        .statusCode(200)
        .extract()
        .cookie(Signed.COOKIE);
  }
}
