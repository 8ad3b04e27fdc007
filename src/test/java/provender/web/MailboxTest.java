package provender.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import provender.web.People.Newcomer;

@QuarkusTest
class MailboxTest {
  private static final String NEW = "kelp forests at low tide";
  private static final Pattern LINK = Pattern.compile("https://tank\\.example/#/(mailbox|reset)/([\\w-]{43})");

  private final String address = UUID.randomUUID() + "@tank.example";

  @Inject MockMailbox post;

  @Test
  void an_address_counts_once_the_link_sent_to_it_was_followed_and_then_a_password_can_be_chosen_by_mail() throws Exception {
    Newcomer one = People.KEEPER.someoneNew();
    give(one, address).then().statusCode(204);
    one.asks().get("/api/v1/mailbox").then().body("sends", equalTo(true)).body("address", equalTo(null));
    confirm(codeIn(letters(1).get(0), "mailbox")).then().statusCode(204);
    one.asks().get("/api/v1/mailbox").then().body("address", equalTo(address));

    askFor(one.name());
    Mail letter = letters(2).get(1);
    assertThat(letter.getText()).contains(one.name());
    String code = codeIn(letter, "reset");
    one.asks().get("/api/v1/session").then().statusCode(200);
    given().contentType(ContentType.JSON).body(Map.of("code", code, "password", NEW)).post("/api/v1/reset").then().statusCode(200)
        .body("keeper.id", equalTo(one.id()));
    one.asks().get("/api/v1/session").then().statusCode(401);
    given().contentType(ContentType.JSON).body(Map.of("code", code, "password", NEW + "s")).post("/api/v1/reset").then().statusCode(400);
  }

  @Test
  void no_letter_goes_to_an_address_that_nobody_confirmed_nor_for_a_name_that_nobody_has() throws Exception {
    Newcomer one = People.KEEPER.someoneNew();
    give(one, address).then().statusCode(204);
    letters(1);
    askFor(one.name());
    askFor("Nobody of this name");
    assertNoMoreLettersThan(1);
  }

  @Test
  void a_link_works_once_and_another_address_needs_another() throws Exception {
    Newcomer one = People.KEEPER.someoneNew();
    give(one, address).then().statusCode(204);
    String first = codeIn(letters(1).get(0), "mailbox");
    give(one, address).then().statusCode(204);
    String second = codeIn(letters(2).get(1), "mailbox");
    confirm(first).then().statusCode(400).body("errors[0].field", equalTo("code"));
    confirm(second).then().statusCode(204);
    confirm(second).then().statusCode(400);
    give(one, "other-" + address).then().statusCode(204);
    one.asks().get("/api/v1/mailbox").then().body("address", equalTo(address));
  }

  @Test
  void an_address_is_taken_out_with_the_password_and_leaves_with_its_owner() throws Exception {
    Newcomer one = confirmed();
    one.asks().contentType(ContentType.JSON).body(Map.of("address", "", "password", "not the password")).put("/api/v1/mailbox")
        .then().statusCode(400).body("errors[0].field", equalTo("password"));
    give(one, "").then().statusCode(204);
    one.asks().get("/api/v1/mailbox").then().body("address", equalTo(null));

    Newcomer other = confirmed();
    other.asks().get("/api/v1/person/export.json").then().body("person.mailAddress", equalTo(address));
    other.asks().contentType(ContentType.JSON).body(Map.of("password", People.A_PASSWORD)).post("/api/v1/person/erasure").then().statusCode(204);
    askFor(other.name());
    assertNoMoreLettersThan(2);
  }

  @Test
  void a_link_for_a_new_password_ends_when_the_address_goes_or_changes_or_the_password_does() throws Exception {
    Newcomer one = confirmed();
    String toChosen = codeAskedFor(one, address, 2);
    one.asks().contentType(ContentType.JSON).body(Map.of("old", People.A_PASSWORD, "password", NEW)).post("/api/v1/session/password")
        .then().statusCode(204);
    reset(toChosen).then().statusCode(400).body("errors[0].field", equalTo("code"));

    Newcomer other = confirmed();
    String toOld = codeAskedFor(other, address, 4);
    give(other, "new-" + address).then().statusCode(204);
    confirm(codeIn(letters("new-" + address, 1).get(0), "mailbox")).then().statusCode(204);
    reset(toOld).then().statusCode(400).body("errors[0].field", equalTo("code"));

    String toGone = codeAskedFor(other, "new-" + address, 2);
    give(other, "").then().statusCode(204);
    reset(toGone).then().statusCode(400).body("errors[0].field", equalTo("code"));
  }

  @Test
  void nobody_else_is_told_an_address() throws Exception {
    Newcomer one = confirmed();
    assertThat(People.STEWARD.asks().get("/api/v1/households/" + People.HOUSEHOLD + "/people").asString()).doesNotContain(address);
    given().get("/api/v1/mailbox").then().statusCode(200).body("address", equalTo(null));
    one.asks().get("/api/v1/mailbox").then().header("Cache-Control", equalTo("no-store"));
  }

  @Test
  void a_mailbox_is_not_flooded() throws Exception {
    Newcomer one = confirmed();
    for (int i = 0; i < 10; i++) {
      askFor(one.name());
    }
    assertNoMoreLettersThan(5);
    give(one, address).then().statusCode(400).body("errors[0].takes", containsString("an hour"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"someone", "someone@tank", "two words@tank.example", "a@tank.example,b@tank.example", "a@tank.example\r\nBcc: b@tank.example",
      "<a@tank.example>", "@tank.example"})
  void what_is_no_single_address_is_refused(String text) {
    Newcomer one = People.KEEPER.someoneNew();
    give(one, text).then().statusCode(400).body("errors[0].field", equalTo("address"));
  }

  @Test
  void a_letter_is_in_the_language_of_the_phone() throws Exception {
    Newcomer one = People.KEEPER.someoneNew();
    one.asks().contentType(ContentType.JSON).body(Map.of("address", address, "password", People.A_PASSWORD, "language", "de"))
        .put("/api/v1/mailbox").then().statusCode(204);
    assertThat(letters(1).get(0).getSubject()).isEqualTo("Deine Mailadresse");
  }

  /** The last of so many letters to that address. */
  private String codeAskedFor(Newcomer one, String to, int wanted) throws InterruptedException {
    askFor(one.name());
    return codeIn(letters(to, wanted).get(wanted - 1), "reset");
  }

  private static Response reset(String code) {
    return given().contentType(ContentType.JSON).body(Map.of("code", code, "password", NEW)).post("/api/v1/reset");
  }

  private Newcomer confirmed() throws InterruptedException {
    Newcomer one = People.KEEPER.someoneNew();
    int before = post.getMailsSentTo(address).size();
    give(one, address).then().statusCode(204);
    confirm(codeIn(letters(before + 1).get(before), "mailbox")).then().statusCode(204);
    return one;
  }

  private static Response give(Newcomer one, String address) {
    return one.asks().contentType(ContentType.JSON).body(Map.of("address", address, "password", People.A_PASSWORD)).put("/api/v1/mailbox");
  }

  private static Response confirm(String code) {
    return given().contentType(ContentType.JSON).body(Map.of("code", code)).post("/api/v1/mailbox/confirmation");
  }

  private static void askFor(String name) {
    given().contentType(ContentType.JSON).body(Map.of("name", name)).post("/api/v1/mailbox/reset").then().statusCode(202).body(equalTo(""));
  }

  /** Those to this test's address, once there are so many. */
  private List<Mail> letters(int wanted) throws InterruptedException {
    return letters(address, wanted);
  }

  private List<Mail> letters(String to, int wanted) throws InterruptedException {
    for (int i = 0; i < 200 && post.getMailsSentTo(to).size() < wanted; i++) {
      Thread.sleep(50);
    }
    assertThat(post.getMailsSentTo(to)).hasSize(wanted);
    return post.getMailsSentTo(to);
  }

  /** Once a letter that was asked for later has come. */
  private void assertNoMoreLettersThan(int wanted) throws InterruptedException {
    Newcomer later = People.KEEPER.someoneNew();
    String to = "later-" + address;
    give(later, to).then().statusCode(204);
    confirm(codeIn(letters(to, 1).get(0), "mailbox")).then().statusCode(204);
    askFor(later.name());
    letters(to, 2);
    letters(wanted);
  }

  private static String codeIn(Mail letter, String page) {
    Matcher link = LINK.matcher(letter.getText());
    assertThat(link.find()).isTrue();
    assertThat(link.group(1)).isEqualTo(page);
    return link.group(2);
  }
}
