package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.net.URI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Passkeys in a real browser, whose phone is a virtual authenticator (Web Authentication, level 2, section 11). */
class PasskeyIT {
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_keeper_makes_a_passkey_signs_in_with_it_names_it_and_removes_it() {
    Page page = glass.stranger("light", 390, 844);
    page.navigate(home());
    addAuthenticator(page);
    glass.enter(page);

    page.navigate(home() + "#/people");
    page.locator("own-passkeys > section > details > summary").click();
    Glass.isFreeOfFaults(page, "passkeys", "light", 390);
    page.locator("own-passkeys input[name=name]").fill("Blue phone");
    page.locator("own-passkeys input[name=password]").fill(Glass.PASSWORD);
    page.locator("own-passkeys button.deed").click();
    assertThat(page.locator("own-passkeys li")).containsText("not used yet");

    signOut(page);
    page.locator("sign-in button.passkey").click();
    assertThat(page.locator("sign-in")).hasCount(0);

    page.navigate(home() + "#/people");
    assertThat(page.locator("own-passkeys li")).containsText("last used");
    page.locator("own-passkeys li summary").click();
    page.locator("own-passkeys li input[name=name]").fill("Shed tablet");
    page.locator("own-passkeys li button.deed").click();
    assertThat(page.locator("own-passkeys li strong")).hasText("Shed tablet");
    page.locator("own-passkeys li button.firm").click();
    assertThat(page.locator("own-passkeys li")).hasCount(0);

    signOut(page);
    page.locator("sign-in button.passkey").click();
    assertThat(page.locator("sign-in [role=alert]")).containsText("opens nothing here");
    Glass.isFreeOfFaults(page, "sign-in-passkey", "light", 390);
  }

  @Test
  void under_a_bare_number_the_page_says_why_there_can_be_none_and_data_can_be_taken_along() {
    Page page = glass.signedIn();
    page.navigate(glass.url() + "/#/people");
    assertThat(page.locator("own-passkeys")).containsText("bare number");
    assertThat(page.locator("own-data a[download]")).hasAttribute("href", "/api/v1/person/export.json");
    page.locator("own-data summary").click();
    page.locator("own-data input[name=password]").fill("not the password");
    page.locator("own-data button.deed").click();
    assertThat(page.locator("own-data [role=status]")).containsText("Password");
    Glass.isFreeOfFaults(page, "own-data", "light", 390);
    page.locator("own-data input[name=password]").fill(Glass.PASSWORD);
    page.locator("own-data button.deed").click();
    page.locator("sign-in input[name=name]").waitFor();
    page.locator("sign-in input[name=name]").fill(Glass.NAME);
    page.locator("sign-in input[name=password]").fill(Glass.PASSWORD);
    page.locator("sign-in button.primary").click();
    assertThat(page.locator("sign-in [role=alert]")).containsText("do not belong together");
  }

  private String home() {
    return "http://localhost:" + URI.create(glass.url()).getPort() + "/";
  }

  private void signOut(Page page) {
    page.navigate(home() + "#/more");
    page.locator("more-page button:has-text('Sign out')").first().click();
    page.locator("sign-in button.passkey").waitFor();
  }

  private static void addAuthenticator(Page page) {
    CDPSession session = page.context().newCDPSession(page);
    session.send("WebAuthn.enable");
    JsonObject phone = new JsonObject();
    phone.addProperty("protocol", "ctap2");
    phone.addProperty("transport", "internal");
    phone.addProperty("hasResidentKey", true);
    phone.addProperty("hasUserVerification", true);
    phone.addProperty("isUserVerified", true);
    phone.addProperty("automaticPresenceSimulation", true);
    JsonObject added = new JsonObject();
    added.add("options", phone);
    session.send("WebAuthn.addVirtualAuthenticator", added);
  }
}
