package provender.web;

import org.jboss.logging.Logger;

/**
 * Says in the log who came in, who did not, and who changed what among people: never a password, a code or a token, and
 * nothing in a shape that could pass for another line.
 */
final class Audit {
  private static final Logger LOG = Logger.getLogger("provender.audit");
  private static final int LONGEST = 100;

  private Audit() {}

  /** @param details names and values in turn */
  static void note(String what, String... details) {
    StringBuilder line = new StringBuilder(what);
    for (int i = 0; i + 1 < details.length; i += 2) {
      line.append(' ').append(details[i]).append("=\"").append(harmless(details[i + 1])).append('"');
    }
    LOG.info(line.toString());
  }

  /** What someone typed, on one line, of bounded length, and without what ends a value. */
  private static String harmless(String typed) {
    StringBuilder plain = new StringBuilder();
    typed.codePoints().limit(LONGEST).forEach(sign -> {
      int type = Character.getType(sign);
      boolean isPlain = type != Character.CONTROL && type != Character.FORMAT && type != Character.LINE_SEPARATOR
          && type != Character.PARAGRAPH_SEPARATOR && type != Character.SURROGATE && sign != '"' && sign != '\\';
      plain.appendCodePoint(isPlain ? sign : '?');
    });
    return plain.toString();
  }
}
