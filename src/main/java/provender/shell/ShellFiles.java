package provender.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** The files a phone keeps, each with a hash of its content, in the order of their addresses. */
record ShellFiles(List<Kept> files) {

  record Kept(String url, String hash) {}

  static ShellFiles in(Path web) throws IOException {
    var files = new ArrayList<Kept>();
    try (var paths = Files.walk(web)) {
      for (var path : paths.filter(Files::isRegularFile).sorted().toList()) {
        var name = web.relativize(path).toString().replace('\\', '/');
        if (isKept(name)) files.add(new Kept(urlOf(name), hash(Files.readAllBytes(path))));
      }
    }
    return new ShellFiles(List.copyOf(files));
  }

  /** Changes when any file does. */
  String version() {
    var all = new StringBuilder();
    for (var file : files) all.append(file.url()).append(' ').append(file.hash()).append('\n');
    return hash(all.toString().getBytes(StandardCharsets.UTF_8));
  }

  // The worker cannot keep itself: a phone would then never hear of the next version. Large icons and screenshots are asked for
  // by the system, when it installs the app.
  private static boolean isKept(String name) {
    var file = name.substring(name.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    boolean forInstalling = name.startsWith("screenshots/") || name.startsWith("icons/") && name.endsWith("512.png");
    return !name.equals("sw.js") && !forInstalling && !file.endsWith(".map") && !file.endsWith(".d.ts")
        && !file.endsWith(PackedFiles.ENDING) && !file.contains("license");
  }

  private static String urlOf(String name) {
    return name.equals("index.html") ? "/" : "/" + name;
  }

  private static String hash(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content), 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
