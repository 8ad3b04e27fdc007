package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetup;
import com.microsoft.playwright.Page;
import jakarta.mail.internet.MimeMessage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A mail server that takes letters over SMTP, a browser, and someone who forgets. */
class MailboxIT {
  private static final String ADDRESS = "teo@tank.example";
  private static final Pattern CODE = Pattern.compile("https://tank\\.example(/#/(?:mailbox|reset)/[\\w-]{43})");

  private final GreenMail mail = new GreenMail(ServerSetup.SMTP.dynamicPort());
  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    mail.stop();
    glass.close();
  }

  @Test
  void who_gave_a_mail_address_comes_back_by_a_link_in_a_letter() throws Exception {
    mail.start();
    glass.killServer();
    glass.startServerAgain("-Dquarkus.mailer.from=provender@tank.example", "-Dprovender.address=https://tank.example",
        "-Dquarkus.mailer.host=127.0.0.1", "-Dquarkus.mailer.port=" + mail.getSmtp().getPort());
    Page page = glass.signedIn();
    page.navigate(glass.url() + "/#/people");
    page.locator("own-mailbox summary").click();
    page.locator("own-mailbox [name=address]").fill(ADDRESS);
    page.locator("own-mailbox [name=password]").fill(Glass.PASSWORD);
    Glass.isFreeOfFaults(page, "own-mailbox", "light", 390);
    page.locator("own-mailbox button.deed").click();
    assertThat(page.locator("own-mailbox [role=status]")).containsText("on its way to " + ADDRESS);

    page.navigate(glass.url() + linkIn(0));
    page.locator("mailbox-page button.deed").click();
    assertThat(page.locator("mailbox-page [role=status]")).containsText("Kept.");
    page.locator("mailbox-page a").click();
    page.locator("feed-page h1").waitFor();

    Page other = glass.stranger("light", 390, 844);
    other.navigate(glass.url());
    other.locator("sign-in summary").click();
    other.locator("sign-in button.letter").click();
    assertThat(other.locator("sign-in details [role=status]")).containsText("Write your name above first");
    other.locator("sign-in [name=name]").fill(Glass.NAME);
    other.locator("sign-in button.letter").click();
    assertThat(other.locator("sign-in details [role=status]")).containsText("an e-mail is on its way");
    Glass.isFreeOfFaults(other, "sign-in-letter", "light", 390);

    other.navigate(glass.url() + linkIn(1));
    other.locator("reset-page [name=password]").fill("kelp forests at low tide");
    other.locator("reset-page button.deed").click();
    other.locator("feed-page .tile, tank-list button").first().waitFor();
  }

  private String linkIn(int place) throws Exception {
    assertThat(mail.waitForIncomingEmail(20_000, place + 1)).isTrue();
    MimeMessage letter = mail.getReceivedMessages()[place];
    assertThat(letter.getAllRecipients()[0].toString()).isEqualTo(ADDRESS);
    Matcher code = CODE.matcher(GreenMailUtil.getBody(letter).replaceAll("=\r?\n", "").replace("=3D", "="));
    assertThat(code.find()).isTrue();
    return code.group(1);
  }
}
