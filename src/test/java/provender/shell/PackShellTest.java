package provender.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.aayushatharva.brotli4j.decoder.Decoder;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import provender.reference.ReferenceFiles;

class PackShellTest {
  private static final ReferenceFiles REFERENCE = ReferenceFiles.onClasspath();
  private static final int ROOMY = 100_000;

  @TempDir Path web;

  @BeforeEach void a_small_web_folder() throws IOException {
    write("index.html", "<!doctype html>");
    write("app.js", "import './ui/fish.js';");
    write("ui/fish.js", "export {};");
    write("engine/engine.js", "export const open = 1;");
    write("engine/engine.js.map", "{}");
    write("types.d.ts", "export type Grams = number;");
    write("lib/lit/LICENSE.txt", "terms");
    write("sw.js", "// the worker\nconst SHELL = [];\nconst VERSION = \"dev\";\nself.skipWaiting;\n");
  }

  @Test void the_tables_become_one_json_file_that_says_the_same() throws IOException {
    pack();
    var written = new ObjectMapper().readValue(web.resolve("shared/reference.json").toFile(), Object.class);
    assertThat(written).isEqualTo(REFERENCE.read());
  }

  @Test void the_worker_keeps_every_file_a_phone_needs_and_no_other() throws IOException {
    pack();
    assertThat(new ObjectMapper().readTree(lineOf("const SHELL = ")).findValuesAsText("url"))
        .containsExactlyInAnyOrder("/", "/app.js", "/ui/fish.js", "/engine/engine.js", "/shared/reference.json");
  }

  @Test void what_is_text_stands_packed_beside_itself_and_unpacks_to_the_same() throws IOException {
    pack();
    for (var file : List.of("index.html", "app.js", "engine/engine.js", "shared/reference.json", "sw.js")) {
      var packed = Files.readAllBytes(web.resolve(file + ".br"));
      assertThat(Decoder.decompress(packed).getDecompressedData()).isEqualTo(Files.readAllBytes(web.resolve(file)));
    }
    assertThat(web.resolve("lib/lit/LICENSE.txt.br")).doesNotExist();
  }

  @Test void the_rest_of_the_worker_stays_as_it_was() throws IOException {
    pack();
    assertThat(worker()).startsWith("// the worker\nconst SHELL = [{\"url\":").endsWith("\";\nself.skipWaiting;\n");
  }

  @Test void one_changed_file_changes_its_hash_and_the_version_and_nothing_else() throws IOException {
    pack();
    var before = new ObjectMapper().readTree(lineOf("const SHELL = "));
    var versionBefore = lineOf("const VERSION = ");
    write("app.js", "import './ui/fish.js'; // changed");
    pack();
    var after = new ObjectMapper().readTree(lineOf("const SHELL = "));
    assertThat(lineOf("const VERSION = ")).isNotEqualTo(versionBefore).isNotEqualTo("\"dev\"");
    for (int i = 0; i < before.size(); i++)
      if (before.get(i).get("url").asText().equals("/app.js")) assertThat(after.get(i)).isNotEqualTo(before.get(i));
      else assertThat(after.get(i)).isEqualTo(before.get(i));
  }

  @Test void packing_twice_gives_the_same_worker() throws IOException {
    pack();
    var once = worker();
    pack();
    assertThat(worker()).isEqualTo(once);
  }

  @Test void a_missing_worker_stops_the_build() throws IOException {
    Files.delete(web.resolve("sw.js"));
    assertThatThrownBy(this::pack).hasMessageContaining("sw.js is missing");
  }

  @Test void a_worker_without_its_two_lines_stops_the_build() throws IOException {
    write("sw.js", "const SHELL = [];\n");
    assertThatThrownBy(this::pack).hasMessageContaining("VERSION");
  }

  @Test void an_engine_within_its_budget_passes_and_one_beyond_it_stops_the_build() throws IOException {
    var noise = new byte[5_000];
    new Random(7).nextBytes(noise);
    Files.write(web.resolve("engine/engine.js"), noise);
    PackShell.pack(REFERENCE, web, 6_000);
    assertThatThrownBy(() -> PackShell.pack(REFERENCE, web, 5_000))
        .hasMessageContaining("engine.js weighs 5000 bytes").hasMessageContaining("budget of 5000");
  }

  private void pack() throws IOException {
    PackShell.pack(REFERENCE, web, ROOMY);
  }

  private void write(String file, String text) throws IOException {
    Files.createDirectories(web.resolve(file).getParent());
    Files.writeString(web.resolve(file), text);
  }

  private String worker() throws IOException {
    return Files.readString(web.resolve("sw.js"));
  }

  private String lineOf(String beginning) throws IOException {
    var line = worker().lines().filter(text -> text.startsWith(beginning)).findFirst().orElseThrow();
    return line.substring(beginning.length(), line.length() - 1);
  }
}
