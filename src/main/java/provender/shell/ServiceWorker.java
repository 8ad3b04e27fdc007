package provender.shell;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The service worker's file, with its two lines that the build fills in. */
record ServiceWorker(Path file) {
  private static final Pattern SHELL = Pattern.compile("^const SHELL = .*;$", Pattern.MULTILINE);
  private static final Pattern VERSION = Pattern.compile("^const VERSION = \".*\";$", Pattern.MULTILINE);

  static ServiceWorker at(Path file) {
    if (!Files.exists(file)) throw new IllegalStateException(file + " is missing: no phone would work offline");
    return new ServiceWorker(file);
  }

  void keep(ShellFiles shell) throws IOException {
    var json = new ObjectMapper();
    var text = Files.readString(file);
    text = replaced(text, SHELL, "const SHELL = " + json.writeValueAsString(shell.files()) + ";");
    text = replaced(text, VERSION, "const VERSION = " + json.writeValueAsString(shell.version()) + ";");
    Files.writeString(file, text);
  }

  private String replaced(String text, Pattern line, String by) {
    var found = line.matcher(text);
    if (found.results().count() != 1)
      throw new IllegalStateException(file + " must hold exactly one line like " + line.pattern());
    return found.reset().replaceFirst(Matcher.quoteReplacement(by));
  }
}
