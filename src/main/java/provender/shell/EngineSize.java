package provender.shell;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;

/** How many bytes the engine weighs on disk, and on the way to the phone. */
record EngineSize(int bytes, int gzippedBytes) {

  static EngineSize of(Path engine) throws IOException {
    var script = Files.readAllBytes(engine);
    var gzipped = new ByteArrayOutputStream();
    try (var gzip = new GZIPOutputStream(gzipped)) {
      gzip.write(script);
    }
    return new EngineSize(script.length, gzipped.size());
  }

  /** Itself, when it keeps to the budget. */
  EngineSize within(int gzippedBudget) {
    if (gzippedBytes > gzippedBudget)
      throw new IllegalStateException(this + ", over its budget of " + gzippedBudget + " gzipped: the build stops");
    return this;
  }

  @Override
  public String toString() {
    return "engine.js weighs " + bytes + " bytes, " + gzippedBytes + " gzipped";
  }
}
