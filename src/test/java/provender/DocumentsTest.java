package provender;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentsTest {
  private static final Pattern PATH =
      Pattern.compile("[`(]((?:src|static|shared|demo|\\.readme)(?:/[\\w.-]+)*)[`)]");
  private static final Pattern CLASS = Pattern.compile("`([A-Z][A-Za-z]+(?:Test|IT|Resource|Contract|Store|Rules))`");
  private static final Pattern ELSEWHERE = Pattern.compile("/wor[k]/|/tm[p]/|/roo[t]/|/home/\\w|localhost:\\d{5}|repo1?\\.maven|registry\\.npm");

  @ParameterizedTest
  @ValueSource(strings = {"README.md", "DEVELOPERS.md", "demo/README.md", "shared/reference/README.md"})
  void every_path_that_is_named_exists(String document) throws IOException {
    assertThat(PATH.matcher(Files.readString(Path.of(document))).results().map(found -> found.group(1)).toList())
        .allSatisfy(path -> assertThat(Path.of(path)).exists());
  }

  @Test
  void every_class_that_the_developers_guide_names_exists() throws IOException {
    List<String> sources = sources();
    List<MatchResult> named = CLASS.matcher(Files.readString(Path.of("DEVELOPERS.md"))).results().toList();
    assertThat(named).isNotEmpty().allSatisfy(found ->
        assertThat(sources).anyMatch(source -> source.endsWith("/" + found.group(1) + ".java")));
  }

  @Test
  void the_readme_begins_with_the_job_and_gives_both_commands() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    assertThat(readme.lines().skip(2).findFirst().orElse("")).startsWith("Whoever looks after");
    assertThat(readme).containsSubsequence("mvn -q package exec:exec@demo -DskipTests", "mvn -B verify", "## What it does not do", "## Cautions");
    assertThat(Files.readString(Path.of("pom.xml"))).contains("<id>demo</id>");
    assertThat(Files.readString(Path.of(".ci/run"))).contains("mvn -B --no-transfer-progress verify");
  }

  @Test
  void every_configuration_key_of_the_readme_is_a_key_we_have() throws IOException {
    String properties = Files.readString(Path.of("src/main/resources/application.properties"));
    Pattern key = Pattern.compile("\\| `((?:provender|quarkus)\\.[\\w.-]+)`");
    assertThat(key.matcher(Files.readString(Path.of("README.md"))).results().map(found -> found.group(1)).toList())
        .isNotEmpty().allSatisfy(name -> assertThat(properties).containsPattern("(?m)^(%\\w+\\.)?" + Pattern.quote(name) + "="));
  }

  @Test
  void nothing_names_a_machine_it_was_made_on() throws IOException {
    List<String> offenders = new ArrayList<>();
    for (String source : sources()) {
      String text = Files.readString(Path.of(source));
      if (!source.endsWith("DocumentsTest.java") && ELSEWHERE.matcher(text).find()) {
        offenders.add(source);
      }
    }
    assertThat(offenders).isEmpty();
  }

  private static List<String> sources() throws IOException {
    List<String> found = new ArrayList<>();
    for (String root : new String[] {"src", "static", "shared", "demo", "README.md", "DEVELOPERS.md", "pom.xml", ".ci"}) {
      try (Stream<Path> files = Files.walk(Path.of(root))) {
        files.filter(Files::isRegularFile).filter(file -> !file.toString().matches(".*\\.(png|jpg)|.*node_modules.*")).map(Path::toString).forEach(found::add);
      }
    }
    return found;
  }
}
