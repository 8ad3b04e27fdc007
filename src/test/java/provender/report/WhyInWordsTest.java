package provender.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.reference.ReferenceFiles;

class WhyInWordsTest {
  private static final Map<String, List<Map<String, Object>>> TABLES = ReferenceFiles.onClasspath().read();
  private final WhyInWords words = WhyInWords.in("en", TABLES).orElseThrow();

  @Test
  void a_step_says_what_how_much_by_which_formula_from_which_numbers_and_who_published_it() {
    Map<String, Object> step = Map.of("what", "massFromLength", "formula", "W = a × L^b", "value", 78.4861, "unit", "g",
        "source", "schiettekatte2022", "inputs", List.of(Map.of("name", "a", "value", 0.02455, "unit", ""), Map.of("name", "b", "value", 2.98, "unit", "1")));
    assertThat(words.of(Map.of("why", List.of(step)))).singleElement().asString()
        .startsWith("Mass from length: 78.5\u202fg = W = a × L^b (a of the species 0.0246; b of the species 2.98). Source read: ");
  }

  @Test
  void in_German_the_same_step_has_German_words_and_a_decimal_comma() {
    WhyInWords german = WhyInWords.in("de", TABLES).orElseThrow();
    Map<String, Object> step = Map.of("what", "massFromLength", "formula", "W = a × L^b", "value", 1278.4861, "unit", "g",
        "source", "practice", "inputs", List.of(Map.of("name", "a", "value", 0.02455, "unit", "")));
    assertThat(german.of(Map.of("why", List.of(step), "sensitivity", List.of(Map.of("input", "b", "ifATenthMore", 0.123)))))
        .containsExactly(
            "Masse aus der Länge: 1.280\u202fg = W = a × L^b (a der Art 0,0246). Haltungspraxis, keine veröffentlichte Quelle.",
            "Wäre jede Zahl ein Zehntel größer: b der Art +12,3\u202f%.");
  }

  @Test
  void a_source_is_cited_in_full_with_its_standing() {
    assertThat(said("usda_sr26")).contains("Source read: U.S. Department of Agriculture");
    assertThat(said("memory:usda_sr26")).contains("From memory, not checked against the source: U.S. Department");
    assertThat(said("practice")).contains("Keeping practice, no published source.");
    assertThat(said("entered|practice")).contains("Entered by a keeper.").contains("Keeping practice");
  }

  @Test
  void what_would_change_it_most_comes_last() {
    assertThat(words.of(Map.of("why", List.of(), "sensitivity", List.of(Map.of("input", "b", "ifATenthMore", -0.123), Map.of("input", "days", "ifATenthMore", 0.02)))))
        .containsExactly("If each number were a tenth larger: b of the species -12.3\u202f%; days +2\u202f%.");
  }

  @ParameterizedTest
  @CsvSource({"xx", "e", "../en", "EN"})
  void a_language_without_a_text_is_refused(String language) {
    assertThat(WhyInWords.in(language, TABLES)).isEmpty();
  }

  /** The pages' and the server's readable fallback is for keys of a later engine, not for this one's. */
  @Test
  void every_step_and_input_the_engine_knows_has_its_words() throws IOException {
    Phrases phrases = Phrases.in("en").orElseThrow();
    assertThat(named("Step\\.of\\(\\s*\"(\\w+)\"")).isNotEmpty().allMatch(key -> phrases.has("why.what." + key));
    assertThat(named("Step\\.input\\(\\s*\"(\\w+)\"")).isNotEmpty().allMatch(key -> phrases.has("why.input." + key));
  }

  private String said(String source) {
    return words.of(Map.of("why", List.of(Map.of("what", "weighed", "value", 1.0, "unit", "g", "source", source)))).get(0);
  }

  private static TreeSet<String> named(String pattern) throws IOException {
    TreeSet<String> keys = new TreeSet<>();
    try (var files = Files.walk(Path.of("src/main/java/provender"))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        Pattern.compile(pattern).matcher(Files.readString(file)).results().map((MatchResult found) -> found.group(1)).forEach(keys::add);
      }
    }
    return keys;
  }
}
