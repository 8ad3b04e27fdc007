package provender.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A module and everything it imports as one file, because a phone takes longer over a hundred small files than over one. Each
 * module stays a function of its own and runs when it is first needed, in the order in which a browser would have run them.
 */
final class JoinedModules {
  private static final String NEED =
      """
      const made = new Map();
      function need(url) {
        let exports = made.get(url);
        if (!exports) made.set(url, exports = modules[url]());
        return exports;
      }
      """;

  private final Path pages;
  private final Path libraries;
  private final Map<String, String> names;
  private final Map<String, ?> apart;

  /**
   * @param libraries where the addresses under /lib are
   * @param names what a bare name stands for, as static/import-map.json says
   * @param apart addresses of files that stay files of their own
   */
  JoinedModules(Path pages, Path libraries, Map<String, String> names, Map<String, ?> apart) {
    this.pages = pages;
    this.libraries = libraries;
    this.names = names;
    this.apart = apart;
  }

  String from(String entry) {
    var found = new LinkedHashMap<String, ModuleText>();
    var first = read(entry);
    for (var url : first.needs()) follow(url, found, new LinkedHashSet<>(Set.of(entry)));
    for (var url : first.later()) follow(url, found, new LinkedHashSet<>(Set.of(entry)));
    var joined = new StringBuilder(String.join("", first.apart())).append("const modules = {\n");
    found.forEach((url, module) -> {
      if (!module.apart().isEmpty()) throw new IllegalStateException(url + " imports a file that only " + entry + " may import");
      joined.append('"').append(url).append("\": () => {\n").append(module.body())
          .append("return { ").append(listed(module, ModuleText.Export::asField)).append(" };\n},\n");
    });
    joined.append("};\n").append(NEED).append(first.body());
    if (!first.exports().isEmpty()) joined.append("export { ").append(listed(first, ModuleText.Export::asName)).append(" };\n");
    return joined.toString();
  }

  private static String listed(ModuleText module, Function<ModuleText.Export, String> how) {
    return module.exports().stream().map(how).collect(Collectors.joining(", "));
  }

  private void follow(String url, Map<String, ModuleText> found, Set<String> way) {
    if (!way.add(url)) throw new IllegalStateException("modules import each other in a circle: " + way + " and again " + url);
    if (!found.containsKey(url)) {
      var module = read(url);
      for (var need : module.needs()) follow(need, found, way);
      found.put(url, module);
      for (var later : module.later()) if (!found.containsKey(later)) follow(later, found, new LinkedHashSet<>());
    }
    way.remove(url);
  }

  private ModuleText read(String url) {
    try {
      var file = url.startsWith("/lib/") ? libraries.resolve(url.substring("/lib/".length())) : pages.resolve(url.substring(1));
      return ModuleText.of(url, Files.readString(file) + "\n", said -> address(url, said), apart);
    } catch (IOException missing) {
      throw new UncheckedIOException("a module is missing: " + url, missing);
    }
  }

  private String address(String from, String said) {
    if (said.startsWith("/")) return said;
    if (said.startsWith(".")) return URI.create(from).resolve(said).toString();
    for (var name : names.entrySet()) {
      if (said.equals(name.getKey())) return name.getValue();
      if (name.getKey().endsWith("/") && said.startsWith(name.getKey())) return name.getValue() + said.substring(name.getKey().length());
    }
    throw new IllegalStateException(from + " imports " + said + ", which the import map lacks");
  }
}
