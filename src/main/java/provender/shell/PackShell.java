package provender.shell;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import provender.reference.ReferenceFiles;

/** The build's last step for the phone. Takes the folder of web files and the engine's budget in gzipped bytes. */
public final class PackShell {
  private PackShell() {}

  public static void main(String[] args) throws IOException {
    if (args.length != 2) throw new IllegalArgumentException("takes the folder of web files and the budget in bytes");
    pack(ReferenceFiles.onClasspath(), Path.of(args[0]), Integer.parseInt(args[1]));
  }

  static void pack(ReferenceFiles reference, Path web, int engineBudgetBytes) throws IOException {
    writeReference(reference, web.resolve("shared/reference.json"));
    System.out.println(EngineSize.of(web.resolve("engine/engine.js")).within(engineBudgetBytes));
    var kept = ShellFiles.in(web);
    ServiceWorker.at(web.resolve("sw.js")).keep(kept);
    System.out.println("the shell holds " + kept.files().size() + " files, version " + kept.version());
  }

  private static void writeReference(ReferenceFiles reference, Path file) throws IOException {
    Files.createDirectories(file.getParent());
    new ObjectMapper().writeValue(file.toFile(), reference.read());
  }
}
