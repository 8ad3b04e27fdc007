package provender.web;

import static io.restassured.RestAssured.given;

import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import java.util.UUID;

/** The demo's keepers as callers: each signs in and speaks with their own cookie. */
enum People {
  STRANGER("", "", "", ""),
  GUEST("Harbour desk", "demo-lantern-desk", "quernhaven", "guest"),
  KEEPER("Teo", "demo-lantern-teo", "quernhaven", "keeper"),
  STEWARD("Maren", "demo-lantern-maren", "quernhaven", "steward"),
  /** Belonged to the household as a steward until it was ended. */
  FORMER("", "", "quernhaven", "steward"),
  OTHER_KEEPER("Bram", "demo-lantern-bram", "tannelwick", "keeper"),
  OTHER_STEWARD("Sunniva", "demo-lantern-sunniva", "tannelwick", "steward");

  static final String TANK = "quernhaven-hall";
  static final String HOUSEHOLD = "quernhaven";
  static final String A_PASSWORD = "a lamp in the pump room";

  private final String name;
  private final String password;
  private final String household;
  private final String role;
  private String session = "";

  People(String name, String password, String household, String role) {
    this.name = name;
    this.password = password;
    this.household = household;
    this.role = role;
  }

  /** Someone who has just joined: their id, their name, and the session in which they ask. */
  record Newcomer(String id, String name, String session) {
    RequestSpecification asks() {
      return given().cookie(Signed.COOKIE, session);
    }
  }

  /** A person of this role whom no other test knows, so that their membership and phones may be ended. */
  Newcomer someoneNew() {
    People steward = household.equals(HOUSEHOLD) ? STEWARD : OTHER_STEWARD;
    Newcomer came = join(invitation(steward, household, role), "Visitor " + UUID.randomUUID());
    if (this == FORMER) {
      steward.asks().delete("/api/v1/households/" + household + "/people/" + came.id()).then().statusCode(204);
    }
    return came;
  }

  static String invitation(People steward, String household, String role) {
    return steward.asks().contentType(ContentType.JSON).body(Map.of("role", role))
        .post("/api/v1/households/" + household + "/invitations").then().statusCode(200).extract().path("code");
  }

  static Newcomer join(String code, String name) {
    Response came = given().contentType(ContentType.JSON).body(Map.of("code", code, "name", name, "password", A_PASSWORD, "device", "a phone"))
        .post("/api/v1/join").then().statusCode(200).extract().response();
    return new Newcomer(came.path("keeper.id"), name, came.cookie(Signed.COOKIE));
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

  RequestSpecification asksAsSomeoneNew() {
    return this == STRANGER ? given() : someoneNew().asks();
  }

  String newSession() {
    if (name.isEmpty()) {
      return someoneNew().session();
    }
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
