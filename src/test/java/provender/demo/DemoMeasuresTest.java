package provender.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A tile offers as much as last time only where the last feeding names its measure as the tank does. */
class DemoMeasuresTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @ParameterizedTest
  @ValueSource(strings = {"quernhaven", "tannelwick", "kettlewharf"})
  void a_feeding_names_its_measure_as_the_app_would(String file) throws IOException {
    Set<String> known = new HashSet<>();
    List<String> named = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("demo", file + ".jsonl"))) {
      JsonNode body = JSON.readTree(line).path("body");
      if (body.path("record").asText().equals("measure")) {
        known.add(body.path("set").path("name").asText());
      }
      body.path("items").findValuesAsText("measure", named);
    }
    assertThat(named).isNotEmpty().allMatch(known::contains);
  }
}
