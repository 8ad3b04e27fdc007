package provender.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import provender.photo.Snapshot;

class FishStoryIT {
  private static final String EMPEROR = "document.querySelector('fish-page').desk.today.fish.find(({ id }) => id === 'majestic')";

  private final Glass glass = new Glass();

  @AfterEach
  void close() {
    glass.close();
  }

  @Test
  void a_fish_shows_its_growth_as_a_picture_and_as_a_table_its_condition_its_tastes_and_its_history() {
    Page page = glass.signedIn();
    Glass.settled(page);
    glass.killServer();
    open(page, "emperor");
    assertThat(page.locator("growth-chart canvas")).isVisible();
    page.locator("growth-chart summary").click();
    assertThat(page.locator("growth-chart tbody tr").first()).containsText("g");

    page.locator("fish-story .chip", new Page.LocatorOptions().setHasText("lean")).click();
    assertThat(page.locator("fish-story")).containsText("2 of 5, lean, seen today");
    page.locator("fish-detail button.firm", new Page.LocatorOptions().setHasText("Refused")).click();
    assertThat(page.locator("fish-story")).containsText("refused some food");
    page.locator("undo-toast button.undo").click();
    assertThat(page.locator("fish-story")).not().containsText("refused some food");

    page.locator("fish-story photo-picker input").setInputFiles(photo());
    assertThat(page.locator("fish-story photo-strip img")).isVisible();
    Glass.isFreeOfFaults(page, "fish-story", "light", 390);
    page.locator("undo-toast button.undo").click();
    assertThat(page.locator("fish-story photo-strip")).hasCount(0);
  }

  @Test
  void two_lengths_read_on_one_ruler_give_a_length_with_its_error_that_counts_from_then_on() {
    Page page = glass.signedIn();
    measure(page);
    page.locator("glass-ruler input[name=object]").fill("10");
    page.locator("glass-ruler input[name=onRuler]").fill("8");
    page.locator("glass-ruler input[name=fish]").fill("20");
    assertThat(page.locator("glass-ruler .verdict")).containsText("25");
    page.locator("glass-ruler button.deed").click();
    assertThat(page.locator("undo-toast")).containsText("Saved");
    open(page, "majestic");
    assertThat(page.locator("fish-story .history li").first()).containsText("25 cm long");
    double[] grams = grams(page);
    assertThat(grams[1]).isLessThan(grams[0] * 0.9);
    assertThat(grams[2]).isGreaterThan(grams[0] * 1.1);
  }

  @Test
  void two_pulls_on_a_photo_measure_too_and_the_photo_stays_with_the_fish() {
    Page page = glass.signedIn();
    measure(page);
    page.locator("glass-ruler input[name=object]").fill("10");
    page.locator("glass-ruler photo-picker input").setInputFiles(photo());
    Locator picture = page.locator("glass-picture .glass");
    picture.scrollIntoViewIfNeeded();
    page.waitForTimeout(300);
    BoundingBox box = picture.boundingBox();
    pull(page, box, 0.1, 0.3, 0.3);
    pull(page, box, 0.1, 0.6, 0.7);
    assertThat(page.locator("glass-ruler .verdict")).containsText("25");
    page.locator("glass-picture .end").last().press("ArrowRight");
    Glass.isFreeOfFaults(page, "glass-ruler", "light", 390);
    page.locator("glass-ruler button.deed").click();
    assertThat(page.locator("undo-toast")).containsText("Saved");
    open(page, "majestic");
    assertThat(page.locator("fish-story .history li").first()).containsText("cm long");
    assertThat(page.locator("fish-story photo-strip img")).isVisible();
  }

  private void open(Page page, String fish) {
    page.navigate(glass.url() + "/#/fish/" + fish);
    page.locator("fish-story section").first().waitFor();
  }

  private void measure(Page page) {
    page.navigate(glass.url() + "/#/setup/size/majestic");
    page.locator("glass-ruler input").first().waitFor();
  }

  private static void pull(Page page, BoundingBox box, double from, double to, double height) {
    double y = box.y + height * box.height;
    page.mouse().move(box.x + from * box.width, y);
    page.mouse().down();
    page.mouse().move(box.x + (from + to) / 2 * box.width, y);
    page.mouse().move(box.x + to * box.width, y);
    page.mouse().up();
  }

  private static double[] grams(Page page) {
    String figure = (String) page.evaluate("(({ value, low, high }) => [value, low, high].join())(" + EMPEROR + ".weightGrams)");
    String[] parts = figure.split(",");
    return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1]), Double.parseDouble(parts[2])};
  }

  private static FilePayload photo() {
    return new FilePayload("fish.jpg", "image/jpeg", Snapshot.jpeg(1200, 800));
  }
}
