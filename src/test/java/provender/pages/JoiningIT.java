package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class JoiningIT {
  private static final int LOOKS = 20;

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_steward_invites_by_link_or_code_and_a_second_phone_comes_in_and_feeds() throws Exception {
    Page steward = glass.stranger("light", 390, 844);
    glass.enter(steward, "Maren", "demo-lantern-maren");
    steward.navigate(glass.url() + "/#/tanks");
    steward.locator("household-tools summary").nth(1).click();
    steward.locator("household-tools record-form button.deed").nth(1).click();
    Glass.isFreeOfFaults(steward, "tanks-of-a-steward", "light", 390);
    String link = steward.locator("output.link").textContent();
    assertThat(link).contains("/#/join/");
    Locator code = steward.locator("household-tools qr-code svg");
    code.evaluate("one => one.scrollIntoView({ block: 'center' })");
    assertThat(readByCamera(code)).isEqualTo(link);

    Page second = glass.stranger("light", 390, 844);
    second.navigate(link);
    second.locator("join-page [name=name]").fill("Weekend help");
    second.locator("join-page [name=password]").fill("a lamp in the pump room");
    Glass.isFreeOfFaults(second, "join", "light", 390);
    second.locator("join-page button.deed").click();
    second.locator("tank-list button, feed-page .tile").first().waitFor();
    if (second.locator("feed-page .tile").count() == 0) {
      second.getByText("Entrance hall").click();
    }
    second.locator("feed-page .tile").first().click();
    second.locator("feeding-tray button.deed").click();
    Glass.isAnotherOne(second);
    Glass.until(second, "() => document.querySelector('feed-page').desk.status.state === 'sent'"
        + " && document.querySelector('feed-page').desk.today.feedings.some(({ sent, by }) =>"
        + " sent && by === document.querySelector('feed-page').desk.keeper.id)", null);

    steward.locator("tank-list button").first().click();
    assertThat(steward.getByText("by Weekend help").first()).isVisible();
  }

  /** A camera looks until it can read: the page may still be moving into its place. */
  private static String readByCamera(Locator code) throws Exception {
    for (int look = 1; ; look++) {
      try {
        return read(code.screenshot());
      } catch (NotFoundException unread) {
        if (look == LOOKS) {
          throw unread;
        }
        code.page().waitForTimeout(200);
      }
    }
  }

  private static String read(byte[] picture) throws Exception {
    BufferedImage seen = ImageIO.read(new ByteArrayInputStream(picture));
    int[] pixels = seen.getRGB(0, 0, seen.getWidth(), seen.getHeight(), null, 0, seen.getWidth());
    RGBLuminanceSource light = new RGBLuminanceSource(seen.getWidth(), seen.getHeight(), pixels);
    return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(light))).getText();
  }
}
