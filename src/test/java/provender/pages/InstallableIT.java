package provender.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provender.RunningServer;

class InstallableIT {
  @TempDir Path profile;

  @Test
  void the_browser_has_nothing_to_say_against_installing_the_app_and_its_manifest_reads_without_fault() {
    try (RunningServer server = RunningServer.fresh("installable"); Chromium chromium = new Chromium();
        BrowserContext phone = chromium.withProfile(profile)) {
      Page page = phone.pages().get(0);
      page.navigate(server.url());
      page.locator("sign-in input[name=name]").waitFor();
      Glass.settled(page);
      CDPSession asked = phone.newCDPSession(page);
      assertThat(list(asked, "Page.getInstallabilityErrors", "installabilityErrors")).isEmpty();
      assertThat(list(asked, "Page.getAppManifest", "errors")).isEmpty();
    }
  }

  private static JsonArray list(CDPSession asked, String question, String answer) {
    return asked.send(question).getAsJsonArray(answer);
  }
}
