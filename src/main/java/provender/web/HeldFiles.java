package provender.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The versions of the files that phones hold, as the build wrote them into the service worker: what is held already is not sent again. */
@Singleton
class HeldFiles {
  private static final Pattern SHELL = Pattern.compile("^const SHELL = (.*);$", Pattern.MULTILINE);

  private final Map<String, String> tags = new HashMap<>();

  HeldFiles() {
    try (InputStream worker = HeldFiles.class.getResourceAsStream("/META-INF/resources/sw.js")) {
      if (worker == null) {
        throw new IllegalStateException("the app's service worker is missing");
      }
      Matcher shell = SHELL.matcher(new String(worker.readAllBytes(), StandardCharsets.UTF_8));
      if (shell.find()) {
        new ObjectMapper().readTree(shell.group(1))
            .forEach(file -> tags.put(file.path("url").asText(), "W/\"" + file.path("hash").asText() + "\""));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The addresses of all these files. */
  Set<String> paths() {
    return Set.copyOf(tags.keySet());
  }

  /** What an answer with that file is to be known by; null for anything else. Weak, because it may come compressed or not. */
  @Nullable String tag(String path) {
    return tags.get(path);
  }
}
