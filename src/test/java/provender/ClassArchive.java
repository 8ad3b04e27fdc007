package provender;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The server's classes, read and checked once for each build instead of at each of some hundred starts. */
final class ClassArchive {
  private static final Path PROGRAM = Path.of("target", "quarkus-app", "quarkus-run.jar");
  private static final Path ARCHIVE = Path.of("target", "server-classes.jsa");

  private ClassArchive() {}

  /** What the JVM is told. It looks at the archive before it trusts it, and starts without one that does not fit. */
  static synchronized List<String> arguments() throws IOException, InterruptedException {
    if (!Files.exists(ARCHIVE) || Files.getLastModifiedTime(ARCHIVE).compareTo(Files.getLastModifiedTime(PROGRAM)) < 0) {
      Files.deleteIfExists(ARCHIVE);
      RunningServer.startedWith(List.of("-XX:ArchiveClassesAtExit=" + ARCHIVE)).end();
    }
    return List.of("-XX:SharedArchiveFile=" + ARCHIVE, "-Xlog:cds=off");
  }
}
