package provender.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** That the joined pages work is shown by every browser test; here is what the joining itself promises. */
class JoinedModulesTest {
  @TempDir Path folder;

  @Test void each_module_becomes_a_function_that_returns_its_exports_and_the_entry_comes_last() throws IOException {
    write("pages/app.js", "import { Fish, kilo as kg } from \"./fish.js\";\nkg(new Fish());\n");
    write("pages/fish.js", "export class Fish {}\nexport const kilo = 1;\nconst own = 2;\nexport { own as other };\n");
    assertThat(joined()).isEqualTo("""
        const modules = {
        "/fish.js": () => {
        class Fish {}
        const kilo = 1;
        const own = 2;
        return { other: own, Fish, kilo };
        },
        };
        const made = new Map();
        function need(url) {
          let exports = made.get(url);
          if (!exports) made.set(url, exports = modules[url]());
          return exports;
        }
        const { Fish, kilo: kg } = need("/fish.js");
        kg(new Fish());
        """);
  }

  @Test void libraries_are_found_by_name_and_what_they_pass_on_is_passed_on() throws IOException {
    write("pages/app.js", "import { html } from \"lit\";\nimport { repeat } from \"lit/more/repeat.js\";\n");
    write("libraries/lit/index.js", "import\"./core.js\";export*from\"./core.js\";export{a as b}from\"./core.js\";\n");
    write("libraries/lit/core.js", "const h=1;export{h as html};\n");
    write("libraries/lit/more/repeat.js", "export const repeat = 1;\n");
    assertThat(joined()).contains("need(\"/lib/lit/core.js\");", "return { ...need(\"/lib/lit/core.js\"), b: need(\"/lib/lit/core.js\").a };",
        "const h=1;", "return { html: h };", "const { repeat } = need(\"/lib/lit/more/repeat.js\");");
  }

  @Test void what_is_imported_later_is_run_later_and_what_stays_apart_is_fetched() throws IOException {
    write("pages/app.js", "import { open } from \"/engine/engine.js\";\nconst page = () => import(\"./page.js\");\nconst chart = () => import(\"chart\");\n");
    write("pages/page.js", "export class Page {}\n");
    assertThat(joined()).startsWith("import { open } from \"/engine/engine.js\";\n")
        .contains("\"/page.js\": () => {", "Promise.resolve().then(() => need(\"/page.js\"))", "const chart = () => import(\"/lib/chart.js\");");
  }

  @Test void a_module_joined_for_itself_exports_what_it_did() throws IOException {
    write("pages/app.js", "import { Fish } from \"./fish.js\";\nconst own = new Fish();\nexport { own as one };\nexport class Tank {}\n");
    write("pages/fish.js", "export class Fish {}\n");
    assertThat(joined()).endsWith("class Tank {}\nexport { own as one, Tank };\n");
  }

  @Test void a_function_that_gives_one_thing_after_another_is_exported_like_any_other() throws IOException {
    write("pages/app.js", "export async function* pages() {}\nexport function* places() {}\n");
    assertThat(joined()).endsWith("async function* pages() {}\nfunction* places() {}\nexport { pages, places };\n");
  }

  @Test void remarks_are_left_out_and_licences_kept() throws IOException {
    write("pages/app.js", "/** @import { Fish } from \"./types.js\" */\n/** @license terms */\n// a remark\nlet /** @type {number} */ n = 1; /* kept */\n");
    assertThat(joined()).endsWith("/** @license terms */\nlet n = 1; /* kept */\n");
  }

  @Test void a_circle_a_missing_module_an_unknown_name_and_a_strange_form_stop_the_build() throws IOException {
    write("pages/app.js", "import \"./a.js\";\n");
    write("pages/a.js", "import \"./b.js\";\n");
    assertThatThrownBy(this::joined).hasMessageContaining("a module is missing: /b.js");
    write("pages/b.js", "import \"./a.js\";\n");
    assertThatThrownBy(this::joined).hasMessageContaining("circle").hasMessageContaining("/a.js");
    write("pages/b.js", "import \"who\";\n");
    assertThatThrownBy(this::joined).hasMessageContaining("/b.js imports who");
    write("pages/b.js", "export default 1;\n");
    assertThatThrownBy(this::joined).hasMessageContaining("/b.js has a line that cannot be joined: export default 1;");
  }

  @Test void a_style_sheet_takes_in_what_it_imports_in_its_layer() throws IOException {
    write("css/index.css", "@layer base;\n@import url(\"a.css\") layer(base);\n@import url(\"../lib/b.css\") layer(base);\n");
    write("css/a.css", "/* a remark */\na {\n  color: red;\n}\n");
    write("libraries/b.css", "b{color:red}");
    assertThat(JoinedStyles.from(folder.resolve("css/index.css"), folder.resolve("libraries")))
        .isEqualTo("@layer base;\n@layer base {\n\na {\ncolor: red;\n}\n\n}\n@layer base {\nb{color:red}\n}\n");
  }

  private String joined() {
    var names = Map.of("lit", "/lib/lit/index.js", "lit/", "/lib/lit/", "chart", "/lib/chart.js");
    return new JoinedModules(folder.resolve("pages"), folder.resolve("libraries"), names,
        Map.of("/engine/engine.js", "", "/lib/chart.js", "")).from("/app.js");
  }

  private void write(String file, String text) throws IOException {
    Files.createDirectories(folder.resolve(file).getParent());
    Files.writeString(folder.resolve(file), text);
  }
}
