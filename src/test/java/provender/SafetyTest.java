package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of what OWASP ASVS 5.0.0 asks at its levels 1 and 2, and where each of it is met here. */
class SafetyTest {
  /** As many as the standard has at these levels: chapters 1 to 17, level 1 and level 2. */
  private static final int OF_LEVEL_1 = 70;
  private static final int OF_LEVEL_2 = 183;

  @Test
  void every_requirement_of_both_levels_is_listed_once() throws IOException {
    List<Map<String, String>> rows = rows();
    assertThat(rows.stream().map(row -> row.get("requirement")).distinct().count()).isEqualTo(rows.size());
    assertThat(rows.stream().filter(row -> row.get("level").equals("1")).count()).isEqualTo(OF_LEVEL_1);
    assertThat(rows.stream().filter(row -> row.get("level").equals("2")).count()).isEqualTo(OF_LEVEL_2);
  }

  @Test
  void what_is_met_names_the_tests_or_files_that_meet_it_and_what_is_not_says_why() throws IOException {
    Set<String> known = names();
    List<String> wrong = new ArrayList<>();
    for (Map<String, String> row : rows()) {
      List<String> where = Stream.of(row.get("where").split(" ")).filter(name -> !name.isEmpty()).toList();
      boolean told = switch (row.get("standing")) {
        case "met" -> !where.isEmpty() && known.containsAll(where);
        case "absent", "decided" -> where.isEmpty() && !row.get("words").isBlank();
        default -> false;
      };
      if (!told) {
        wrong.add(row.toString());
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static List<Map<String, String>> rows() throws IOException {
    CsvSchema columns = CsvSchema.emptySchema().withHeader();
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper().readerForMapOf(String.class).with(columns).readValues(Path.of("src/test/resources/asvs-5.0.csv").toFile())) {
      return rows.readAll();
    }
  }

  /** Files by their names, classes also by their own. */
  private static Set<String> names() throws IOException {
    Set<String> names = new HashSet<>(Set.of("pom.xml", "README.md", "DEVELOPERS.md"));
    for (String folder : List.of("src", "static")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        files.filter(Files::isRegularFile).map(path -> path.getFileName().toString())
            .forEach(name -> names.add(name.endsWith(".java") ? name.substring(0, name.length() - 5) : name));
      }
    }
    return names;
  }
}
