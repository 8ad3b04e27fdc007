package provender.report;

import java.util.Map;

/** A letter's subject and text in one language, from the same file as all other sentences. */
public record LetterInWords(String subject, String text) {
  private static final String FALLBACK = "en";

  /**
   * @param about what its sentences are kept under, {@code letter.ABOUT.subject} and {@code letter.ABOUT.text}
   * @param language such as {@code de}; English where there is no file for it
   */
  public static LetterInWords of(String about, String language, Map<String, String> holes) {
    Phrases phrases = Phrases.in(language).or(() -> Phrases.in(FALLBACK)).orElseThrow();
    return new LetterInWords(phrases.say("letter." + about + ".subject", holes), phrases.say("letter." + about + ".text", holes));
  }
}
