package provender.shell;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import provender.reference.ReferenceFiles;

/**
 * The build's last step for the phone. Takes the folder of the pages' sources, that of the libraries they use, the folder of web
 * files to be filled and the engine's budget in gzipped bytes.
 */
public final class PackShell {
  private static final Map<String, String> APART =
      Map.of("/engine/engine.js", "made by the compiler", "/lib/uplot/uPlot.js", "fetched with the first chart");

  private final Path pages;
  private final Path libraries;
  private final Path web;

  private PackShell(Path pages, Path libraries, Path web) {
    this.pages = pages;
    this.libraries = libraries;
    this.web = web;
  }

  public static void main(String[] args) throws IOException {
    if (args.length != 4) throw new IllegalArgumentException("takes the folders of pages, libraries and web files, and the budget in bytes");
    var shell = new PackShell(Path.of(args[0]), Path.of(args[1]), Path.of(args[2]));
    shell.join();
    pack(ReferenceFiles.onClasspath(), shell.web, Integer.parseInt(args[3]));
  }

  /** The scripts of the page and of the engine's thread as one file each, the styles as one, and the charts' library as a module. */
  private void join() throws IOException {
    var scripts = modules(pages, libraries);
    for (var script : new String[] {"/app.js", "/engine/worker.js"}) write(script.substring(1), scripts.from(script));
    write("css/index.css", JoinedStyles.from(pages.resolve("css/index.css"), libraries));
    write("lib/uplot/uPlot.js", Files.readString(libraries.resolve("uplot/uPlot.iife.min.js")) + "\nexport default uPlot;\n");
  }

  /** The modules of the pages, ready to be joined. */
  static JoinedModules modules(Path pages, Path libraries) throws IOException {
    var map = new LinkedHashMap<String, String>();
    var written = new ObjectMapper().readTree(pages.resolve("import-map.json").toFile()).path("imports");
    written.properties().forEach(name -> map.put(name.getKey(), name.getValue().asText()));
    return new JoinedModules(pages, libraries, map, APART);
  }

  private void write(String name, String text) throws IOException {
    Files.createDirectories(web.resolve(name).getParent());
    Files.writeString(web.resolve(name), text);
  }

  static void pack(ReferenceFiles reference, Path web, int engineBudgetBytes) throws IOException {
    writeReference(reference, web.resolve("shared/reference.json"));
    System.out.println(EngineSize.of(web.resolve("engine/engine.js")).within(engineBudgetBytes));
    var kept = ShellFiles.in(web);
    ServiceWorker.at(web.resolve("sw.js")).keep(kept);
    System.out.println("the shell holds " + kept.files().size() + " files, version " + kept.version());
    System.out.println(PackedFiles.in(web));
  }

  private static void writeReference(ReferenceFiles reference, Path file) throws IOException {
    Files.createDirectories(file.getParent());
    new ObjectMapper().writeValue(file.toFile(), reference.read());
  }
}
