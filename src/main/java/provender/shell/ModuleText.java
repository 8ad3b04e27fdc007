package provender.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One JavaScript module as the body of a function: what it imports is asked of {@code need}, what it exports is returned.
 * Reads the plain forms that our modules and our libraries are written in; any other export stops the build.
 *
 * @param needs the addresses of modules it imports, in their order
 * @param later those it imports only when it comes to it
 * @param apart import lines for files that stay files of their own
 */
record ModuleText(String body, List<Export> exports, List<String> needs, List<String> later, List<String> apart) {
  /** A name for others and what it stands for; without a name, everything that another module exports. */
  record Export(String name, String value) {
    String asField() {
      return name.isEmpty() ? "..." + value : name.equals(value) ? name : name + ": " + value;
    }

    String asName() {
      if (!value.matches("[\\w$]+")) throw new IllegalStateException(value + " is passed on by a module that is joined for itself");
      return value.equals(name) ? name : value + " as " + name;
    }
  }

  /** Ours say types in comments of two stars; licences are kept. */
  private static final Pattern NOTE = Pattern.compile("/\\*\\*(?!\\s*\\*?\\s*@license)(?!/)[\\s\\S]*?\\*/[ ]?|(?m)^[ \\t]*//.*$");

  /** How far a line stands in means nothing, neither in code nor in a template's HTML. */
  private static final Pattern BLANK = Pattern.compile("(?m)^[ \\t]*\\n|^[ \\t]+");
  private static final Pattern IMPORT =
      Pattern.compile("(?m)(?:^|(?<=;))[ \\t]*import\\s*(?:([\\w$*{][^\"'();]*?)\\s*from\\s*)?[\"']([^\"'\\n]+)[\"'];?");
  private static final Pattern LATER = Pattern.compile("\\bimport\\(\"([^\"\\n]+)\"\\)");
  private static final Pattern EXPORT_FROM =
      Pattern.compile("\\bexport\\s*(\\*|\\{[^}]*\\})\\s*from\\s*[\"']([^\"'\\n]+)[\"'];?");
  private static final Pattern EXPORT_LIST = Pattern.compile("\\bexport\\s*\\{([^}]*)\\};?");
  private static final Pattern EXPORT_MADE =
      Pattern.compile("(?m)^export ((?:async )?function\\*?|class|const|let) ([\\w$]+)");
  private static final Pattern LEFT_OVER = Pattern.compile("(?m)^[ \\t]*(?:import|export)\\b.*$");

  /**
   * @param address turns what a module says it imports into the address it stands at
   * @param apart addresses of files that are not joined
   */
  static ModuleText of(String url, String source, UnaryOperator<String> address, Map<String, ?> apart) {
    var needs = new ArrayList<String>();
    var later = new ArrayList<String>();
    var alone = new ArrayList<String>();
    var exports = new ArrayList<Export>();
    var text = NOTE.matcher(source).replaceAll("");
    text = IMPORT.matcher(text).replaceAll(found -> {
      var from = address.apply(found.group(2));
      if (apart.containsKey(from)) {
        alone.add("import " + found.group(1) + " from \"" + from + "\";\n");
        return "";
      }
      needs.add(from);
      var need = "need(\"" + from + "\");";
      return Matcher.quoteReplacement(found.group(1) == null ? need : "const " + taken(found.group(1)) + " = " + need);
    });
    text = LATER.matcher(text).replaceAll(found -> {
      var from = address.apply(found.group(1));
      if (apart.containsKey(from)) return Matcher.quoteReplacement("import(\"" + from + "\")");
      later.add(from);
      return Matcher.quoteReplacement("Promise.resolve().then(() => need(\"" + from + "\"))");
    });
    text = EXPORT_FROM.matcher(text).replaceAll(found -> {
      var from = address.apply(found.group(2));
      needs.add(from);
      if (found.group(1).equals("*")) exports.add(new Export("", "need(\"" + from + "\")"));
      else named(found.group(1)).forEach(pair -> exports.add(new Export(pair[1], "need(\"" + from + "\")." + pair[0])));
      return "";
    });
    text = EXPORT_LIST.matcher(text).replaceAll(found -> {
      named(found.group(1)).forEach(pair -> exports.add(new Export(pair[1], pair[0])));
      return "";
    });
    text = EXPORT_MADE.matcher(text).replaceAll(found -> {
      exports.add(new Export(found.group(2), found.group(2)));
      return Matcher.quoteReplacement(found.group(1) + " " + found.group(2));
    });
    var strange = LEFT_OVER.matcher(text);
    if (strange.find()) throw new IllegalStateException(url + " has a line that cannot be joined: " + strange.group());
    var body = BLANK.matcher(text).replaceAll("");
    return new ModuleText(body, List.copyOf(exports), List.copyOf(needs), List.copyOf(later), List.copyOf(alone));
  }

  /** {@code { a, b as c }} as a pattern to take apart, {@code * as all} as a name, a default as what it is called. */
  private static String taken(String clause) {
    if (clause.startsWith("*")) return clause.replaceFirst("\\*\\s*as\\s+", "");
    if (!clause.startsWith("{")) return "{ default: " + clause.strip() + " }";
    var parts = new ArrayList<String>();
    named(clause).forEach(pair -> parts.add(pair[0].equals(pair[1]) ? pair[0] : pair[0] + ": " + pair[1]));
    return "{ " + String.join(", ", parts) + " }";
  }

  /** The pairs of a list such as {@code { a, b as c }}: the name there and the name here. */
  private static List<String[]> named(String clause) {
    var pairs = new ArrayList<String[]>();
    for (var part : clause.replaceAll("[{}]", "").split(",")) {
      if (part.isBlank()) continue;
      var both = part.strip().split("\\s+as\\s+");
      pairs.add(new String[] {both[0], both[both.length - 1]});
    }
    return pairs;
  }
}
