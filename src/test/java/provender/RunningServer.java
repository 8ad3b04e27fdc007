package provender;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The packaged server as a process of its own, to be killed and started again over the same data. */
public final class RunningServer implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(180);
  /** The unit of {@code ulimit -f} (POSIX). */
  private static final int BYTES_OF_A_LIMIT = 512;
  /** What lives for seconds is not worth compiling twice. */
  private static final List<String> SOON_UP = List.of("-XX:TieredStopAtLevel=1");
  /** For {@link #fresh}, when how fast it answers matters. */
  public static final String FULLY_COMPILED = "-XX:TieredStopAtLevel=4";

  private final Path data;
  private final int port;
  private final Process process;

  private RunningServer(Path data, int port, List<String> before, List<String> classes, String... options) throws IOException {
    this.data = data;
    this.port = port;
    Path log = Path.of("target", "server-" + port + ".log");
    List<String> command = new ArrayList<>(before);
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(SOON_UP);
    command.addAll(classes);
    command.addAll(List.of("-Dquarkus.profile=demo", "-Dprovender.data=" + data, "-Dquarkus.http.port=" + port));
    command.addAll(List.of(options));
    command.addAll(List.of("-jar", "target/quarkus-app/quarkus-run.jar"));
    this.process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
            .start();
  }

  /** A server with the demo, over an empty folder of its own. */
  public static RunningServer fresh(String name, String... options) {
    try {
      return start(Files.createTempDirectory(Path.of("target"), name), freePort(), List.of(), options);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** One that has answered, for what its JVM does with its classes. */
  static RunningServer startedWith(List<String> classes) throws IOException, InterruptedException {
    RunningServer server = new RunningServer(Files.createTempDirectory(Path.of("target"), "classes"), freePort(), List.of(), classes);
    server.awaitAnswer();
    return server;
  }

  private static int freePort() throws IOException {
    try (ServerSocket free = new ServerSocket(0)) {
      return free.getLocalPort();
    }
  }

  /** The same data at the same address, once more. */
  public RunningServer again(String... options) {
    return start(data, port, List.of(), options);
  }

  /** Once more, with a disk on which no file can grow larger. */
  public RunningServer againWithRoomFor(long bytes) {
    return start(data, port, List.of("sh", "-c", "ulimit -f " + bytes / BYTES_OF_A_LIMIT + "; exec \"$@\"", "sh"));
  }

  /** Today's backup, once it is there. */
  public Path backup() throws InterruptedException {
    Path copy = data.resolve("backups").resolve("provender-" + LocalDate.now(ZoneOffset.UTC) + ".zip");
    for (int i = 0; i < 100 && !Files.exists(copy); i++) {
      Thread.sleep(100);
    }
    return copy;
  }

  /** As the README says it: the files of the copy over those in the data folder. */
  public void putBack(Path copy) throws IOException {
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(copy))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        Files.copy(zip, data.resolve(Path.of(entry.getName()).getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  private static RunningServer start(Path data, int port, List<String> before, String... options) {
    try {
      RunningServer server = new RunningServer(data, port, before, ClassArchive.arguments(), options);
      server.awaitAnswer();
      return server;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  public Path data() {
    return data;
  }

  public String url() {
    return "http://127.0.0.1:" + port;
  }

  /** As Ctrl-C would: in its own time. */
  void end() throws InterruptedException {
    process.destroy();
    process.waitFor();
  }

  /** As a power cut would: no goodbye. */
  public void kill() {
    process.destroyForcibly();
    try {
      process.waitFor(20, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    kill();
  }

  private void awaitAnswer() throws IOException, InterruptedException {
    HttpClient client = HttpClient.newHttpClient();
    HttpRequest ready = HttpRequest.newBuilder(URI.create(url() + "/q/health/ready")).build();
    long until = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < until && process.isAlive()) {
      try {
        if (client.send(ready, BodyHandlers.discarding()).statusCode() == 200) {
          return;
        }
      } catch (IOException notYet) {
        // It is still starting.
      }
      Thread.sleep(200);
    }
    kill();
    throw new IllegalStateException("the server did not come up; see target/server-" + port + ".log");
  }
}
