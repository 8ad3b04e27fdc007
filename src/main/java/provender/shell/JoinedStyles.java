package provender.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A style sheet with what it imports put in place, each in its layer, and without remarks. */
final class JoinedStyles {
  private static final Pattern IMPORT = Pattern.compile("@import url\\(\"([^\"]+)\"\\) layer\\(([\\w-]+)\\);");
  private static final Pattern REMARK = Pattern.compile("/\\*[\\s\\S]*?\\*/");
  private static final Pattern SPACE = Pattern.compile("\\s*\\n\\s*");

  private JoinedStyles() {}

  /** @param libraries where the addresses under ../lib are */
  static String from(Path sheet, Path libraries) {
    return IMPORT.matcher(read(sheet)).replaceAll(found -> {
      var name = found.group(1);
      var file = name.startsWith("../lib/") ? libraries.resolve(name.substring("../lib/".length())) : sheet.resolveSibling(name);
      return Matcher.quoteReplacement("@layer " + found.group(2) + " {\n" + read(file) + "\n}");
    });
  }

  private static String read(Path file) {
    try {
      return SPACE.matcher(REMARK.matcher(Files.readString(file)).replaceAll("")).replaceAll("\n");
    } catch (IOException missing) {
      throw new UncheckedIOException("a style sheet is missing: " + file, missing);
    }
  }
}
