package provender.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where a figure comes from, one paragraph a step: what, how much, by which formula from which numbers, and the source in full. */
public final class WhyInWords {
  private static final String MEMORY = "memory:";

  private final Phrases phrases;
  private final Map<String, Map<String, Object>> sources;

  private WhyInWords(Phrases phrases, Map<String, Map<String, Object>> sources) {
    this.phrases = phrases;
    this.sources = sources;
  }

  /**
   * A way of saying it in one language, if there is one.
   *
   * @param tables the published tables, of which it needs the sources
   */
  public static Optional<WhyInWords> in(String language, Map<String, List<Map<String, Object>>> tables) {
    Map<String, Map<String, Object>> sources = new HashMap<>();
    for (Map<String, Object> row : tables.getOrDefault("sources", List.of())) {
      sources.put(text(row, "key"), row);
    }
    return Phrases.in(language).map(phrases -> new WhyInWords(phrases, sources));
  }

  /** @param answer a calculation's, with {@code why} and perhaps {@code sensitivity} */
  public List<String> of(Map<String, Object> answer) {
    List<String> paragraphs = new ArrayList<>();
    for (Map<?, ?> step : objects(answer.get("why"))) {
      paragraphs.add(step(step));
    }
    List<String> matters = new ArrayList<>();
    for (Map<?, ?> one : objects(answer.get("sensitivity"))) {
      double change = number(one, "ifATenthMore");
      matters.add(label("why.input", text(one, "input")) + " " + (change > 0 ? "+" : "") + phrases.figure(change * 100, "%"));
    }
    if (!matters.isEmpty()) {
      paragraphs.add(phrases.say("why.tenthMore", Map.of("changes", String.join("; ", matters))));
    }
    return paragraphs;
  }

  private String step(Map<?, ?> step) {
    String value = phrases.figure(number(step, "value"), text(step, "unit"));
    StringBuilder said = new StringBuilder(label("why.what", text(step, "what"))).append(": ").append(value);
    if (!text(step, "formula").isEmpty()) {
      said.append(" = ").append(text(step, "formula"));
    }
    List<String> inputs = new ArrayList<>();
    for (Map<?, ?> input : objects(step.get("inputs"))) {
      inputs.add(label("why.input", text(input, "name")) + " " + phrases.figure(number(input, "value"), text(input, "unit")));
    }
    if (!inputs.isEmpty()) {
      said.append(" (").append(String.join("; ", inputs)).append(")");
    }
    return said.append(". ").append(sources(text(step, "source"))).toString().strip();
  }

  /** @param keys one, or several joined by a bar */
  private String sources(String keys) {
    List<String> said = new ArrayList<>();
    for (String key : keys.split("\\|")) {
      if (!key.isEmpty()) {
        Map<String, Object> row = sources.get(key.startsWith(MEMORY) ? key.substring(MEMORY.length()) : key);
        String standing = phrases.say("standing." + standing(key, row));
        said.add(row == null || key.equals("practice") ? standing + "." : standing + ": " + text(row, "citation"));
      }
    }
    return String.join(" ", said);
  }

  private static String standing(String key, @Nullable Map<String, Object> row) {
    if (key.equals("practice") || key.equals("entered")) {
      return key;
    }
    String status = row == null ? "" : text(row, "status");
    boolean remembered = key.startsWith(MEMORY) || status.equals("memory");
    return remembered ? "memory" : status.equals("practice") ? "practice" : "read";
  }

  /** The words for a step or an input, its key made readable where the text file has none. */
  private String label(String kind, String key) {
    String textKey = kind + "." + key;
    return phrases.has(textKey) ? phrases.say(textKey) : key.replaceAll("([a-z])([A-Z])", "$1 $2").replaceAll("[_.-]", " ").toLowerCase();
  }

  private static List<Map<?, ?>> objects(@Nullable Object list) {
    List<Map<?, ?>> objects = new ArrayList<>();
    if (list instanceof List<?> items) {
      for (Object item : items) {
        if (item instanceof Map<?, ?> map) {
          objects.add(map);
        }
      }
    }
    return objects;
  }

  private static String text(Map<?, ?> object, String name) {
    return object.get(name) instanceof String text ? text : "";
  }

  private static double number(Map<?, ?> object, String name) {
    return object.get(name) instanceof Double number ? number : 0;
  }
}
