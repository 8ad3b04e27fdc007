package provender.shell;

import com.aayushatharva.brotli4j.Brotli4jLoader;
import com.aayushatharva.brotli4j.encoder.Encoder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The text files of the web folder packed once by the build with Brotli (RFC 7932), as small as they go: at a request there is
 * no time for that. Each stands beside its file under the same name and {@code .br}.
 */
record PackedFiles(int count, long bytes) {
  static final String ENDING = ".br";
  private static final List<String> TEXTS = List.of(".html", ".js", ".css", ".json", ".webmanifest", ".svg");
  private static final int SMALLEST = 11;

  /** Packs nothing where there is no Brotli for the machine; the server then packs at each request, and less. */
  static PackedFiles in(Path web) throws IOException {
    int count = 0;
    long bytes = 0;
    if (Brotli4jLoader.isAvailable()) {
      for (Path file : texts(web)) {
        byte[] packed = Encoder.compress(Files.readAllBytes(file), Encoder.Parameters.create(SMALLEST));
        Files.write(file.resolveSibling(file.getFileName() + ENDING), packed);
        count++;
        bytes += packed.length;
      }
    }
    return new PackedFiles(count, bytes);
  }

  private static List<Path> texts(Path web) throws IOException {
    try (var paths = Files.walk(web)) {
      return paths.filter(Files::isRegularFile).filter(path -> TEXTS.stream().anyMatch(path.toString()::endsWith)).sorted().toList();
    }
  }

  @Override
  public String toString() {
    return count + " files packed to " + bytes + " bytes";
  }
}
