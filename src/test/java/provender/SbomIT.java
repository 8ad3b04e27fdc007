package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the package is made of, as it lies beside it. */
class SbomIT {

  @Test
  void the_bill_of_materials_lists_what_runs_on_the_server_and_on_the_phone_and_nothing_of_the_tests() throws Exception {
    JsonNode bill = new ObjectMapper().readTree(Path.of("target", "provender-sbom.json").toFile());
    assertThat(bill.path("bomFormat").asText()).isEqualTo("CycloneDX");
    assertThat(bill.path("specVersion").asText()).isEqualTo("1.6");
    List<String> parts = new ArrayList<>();
    for (JsonNode part : bill.path("components")) {
      parts.add(part.path("name").asText());
      assertThat(part.path("purl").asText()).startsWith("pkg:maven/");
      assertThat(part.path("version").asText()).isNotBlank();
    }
    assertThat(parts).contains("h2", "quarkus-rest-jackson", "webauthn4j-core", "bcpkix-jdk18on", "lit", "lit-html", "idb", "uplot", "teavm-classlib")
        .doesNotContain("archunit", "jqwik", "rest-assured", "axe-core");
  }
}
