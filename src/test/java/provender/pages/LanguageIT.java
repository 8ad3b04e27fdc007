package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LanguageIT {
  private static final List<String> PAGES =
      List.of("feed", "today", "week", "fish", "fish/emperor", "more", "records", "people", "round", "trust", "tanks", "sources", "setup", "setup/tank/", "setup/add-fish",
          "setup/size/emperor", "setup/measure/new", "setup/food/new", "setup/recipe/new", "feeders", "feeders/new", "feeders/part",
          "feeders/pellet-feeder/fill", "feeders/pellet-feeder/weigh", "water", "water/test", "water/exchange", "water/wanted");

  /** Text on screen, what is said to those who hear it included, that is a key or an English sentence which German has other words for. */
  private static final String LEFT_OVER =
      """
      async () => {
        const [en, de] = await Promise.all(['en', 'de'].map((code) => fetch(`/shared/text/${code}.json`).then((answer) => answer.json())));
        const forms = (phrase) => (typeof phrase === 'string' ? [phrase] : Object.values(phrase));
        const literal = (text) => text.replace(/[.*+?^$()|[\\]\\\\]/g, '\\\\$&');
        const told = (text) => new RegExp('^' + text.split(/\\{\\w+\\}/).map(literal).join('.+') + '$');
        const english = Object.keys(en).flatMap((key) => forms(en[key]).filter((text) => text && !forms(de[key]).includes(text)
          && text.replace(/\\{\\w+\\}/g, '').trim().length > 6).map(told));
        const german = new Set(Object.values(de).flatMap(forms));
        const words = [...document.body.querySelectorAll('*')].filter((element) => !element.closest('body [lang=en], script, style, template, noscript'))
          .flatMap((element) => [...[...element.childNodes].filter((node) => node.nodeType === 3).map((node) => node.data),
            ...['aria-label', 'placeholder', 'title'].map((name) => element.getAttribute(name) ?? '')])
          .concat(document.title).map((text) => text.trim()).filter(Boolean);
        return words.filter((text) => !german.has(text) && (text in en || english.some((sentence) => sentence.test(text))));
      }
      """;

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_keeper_switches_to_German_and_every_page_speaks_it() {
    Page page = glass.signedIn();
    page.navigate(glass.url() + "/#/more");
    assertThat(page.locator("more-page h1")).containsText("More");
    assertThat((List<?>) page.evaluate(LEFT_OVER)).as("what is looked for is seen before the switch").isNotEmpty();
    page.getByLabel("Deutsch").check();
    assertThat(page.locator("more-page h1")).containsText("Mehr");
    assertThat(page.locator("nav-bar a[href='#/week']")).containsText("Woche");
    assertThat(page.locator("html")).hasAttribute("lang", "de");
    assertThat(page.getByLabel("Deutsch")).isFocused();
    assertThat(page).hasTitle("Mehr · Provender");

    for (String where : PAGES) {
      page.navigate(glass.url() + "/#/" + where);
      page.waitForTimeout(300);
      assertThat(page.locator("main h1").first()).isVisible();
      assertThat((List<?>) page.evaluate(LEFT_OVER)).as(where).isEmpty();
    }
    page.navigate(glass.url() + "/#/today");
    assertThat(page.locator("ration-panel")).containsText(Pattern.compile("\\d,\\d"));
    assertThat(page.locator("ration-panel").textContent()).doesNotContainPattern("\\d\\.\\d{1,2}\\b");
  }

  @Test
  void the_choice_stays_on_the_phone_and_needs_no_server() {
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    page.navigate(glass.url() + "/#/more");
    page.getByLabel("Deutsch").check();
    assertThat(page.locator("more-page h1")).containsText("Mehr");
    page.reload();
    assertThat(page.locator("more-page h1")).containsText("Mehr");
    page.getByLabel("English").check();
    assertThat(page.locator("more-page h1")).containsText("More");
  }

  @Test
  void who_has_chosen_nothing_is_greeted_as_the_browser_asks() {
    Page page = glass.stranger("light", 390, 844, "de-AT");
    assertThat(page.locator("sign-in h1")).hasText("Anmelden");
    assertThat(page.locator("html")).hasAttribute("lang", "de");
  }

  @Test
  void weights_and_parts_are_entered_with_a_comma_and_German_names() {
    Page page = glass.stranger("light", 390, 844, "de-DE");
    glass.enter(page);
    page.navigate(glass.url() + "/#/setup/food/new");
    page.locator("[name=name]").fill("Unser Brei");
    page.locator("[name=waterGrams]").fill("71,5");
    page.locator("[name=proteinGrams]").fill("16");
    page.locator("[name=fatGrams]").fill("3,25");
    page.locator("[name=components]").fill("Krebstiere 60\nKrebsdinger 10");
    page.locator("record-form button.deed").click();
    assertThat(page.getByText("Nicht verstanden: Krebsdinger 10.")).isVisible();

    page.locator("[name=components]").fill("Krebstiere 60\nAlgen 12,5");
    page.locator("record-form button.deed").click();
    Glass.until(page, "() => document.querySelector('setup-page').desk.today.ownFoods.some(({ name }) => name === 'Unser Brei')", null);
    page.locator("setup-page").getByText("Unser Brei").click();
    assertThat(page.locator("[name=name]")).hasValue("Unser Brei");
  }
}
