package provender.report;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The sentences of one language, and how that language writes a number. */
final class Phrases {
  private static final MathContext THREE_DIGITS = new MathContext(3);
  private static final int MOST_DECIMALS = 12;

  private final Map<String, Object> phrases;
  private final NumberFormat numbers;

  private Phrases(Map<String, Object> phrases, Locale locale) {
    this.phrases = phrases;
    this.numbers = NumberFormat.getNumberInstance(locale);
    numbers.setMaximumFractionDigits(MOST_DECIMALS);
  }

  /** @param language such as {@code en}; empty when there is no file for it */
  static Optional<Phrases> in(String language) {
    if (!language.matches("[a-z]{2}")) {
      return Optional.empty();
    }
    try (InputStream file = Phrases.class.getResourceAsStream("/META-INF/resources/shared/text/" + language + ".json")) {
      return file == null
          ? Optional.empty()
          : Optional.of(new Phrases(new ObjectMapper().readValue(file, new TypeReference<>() {}), Locale.forLanguageTag(language)));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  boolean has(String key) {
    return phrases.containsKey(key);
  }

  /** The sentence with its holes filled; a missing one is its key, so that it is noticed. */
  String say(String key, Map<String, String> holes) {
    String text = phrases.get(key) instanceof String found ? found : key;
    for (Map.Entry<String, String> hole : holes.entrySet()) {
      text = text.replace("{" + hole.getKey() + "}", hole.getValue());
    }
    return text;
  }

  String say(String key) {
    return say(key, Map.of());
  }

  /** Three digits that count, with the unit; a bare ratio carries the unit "1", which nobody says. */
  String figure(double value, String unit) {
    String number = numbers.format(BigDecimal.valueOf(value).round(THREE_DIGITS));
    return unit.isEmpty() || unit.equals("1") ? number : number + "\u202f" + unit;
  }
}
