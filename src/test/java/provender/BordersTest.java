package provender;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class BordersTest {
  private static final JavaClasses OURS =
      new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("provender");
  private static final String[] PURE_JAVA = {"java.lang", "java.lang.invoke", "java.lang.runtime", "java.util", "java.util.function", "org.jspecify.annotations"};

  @Test
  void the_engine_knows_only_itself_and_the_language() {
    classes().that().resideInAPackage("provender.engine..")
        .should().onlyDependOnClassesThat(resideInAnyPackage(with("provender.engine..")))
        .check(OURS);
  }

  @Test
  void the_contract_knows_only_the_engine() {
    classes().that().resideInAPackage("provender.contract")
        .should().onlyDependOnClassesThat(resideInAnyPackage(with("provender.contract", "provender.engine..")))
        .check(OURS);
  }

  @Test
  void neither_asks_a_clock_or_chance() {
    noClasses().that().resideInAnyPackage("provender.engine..", "provender.contract")
        .should().callMethod(System.class, "currentTimeMillis")
        .orShould().callMethod(System.class, "nanoTime")
        .orShould().callMethod(Math.class, "random")
        .orShould().dependOnClassesThat().areAssignableTo(java.util.Random.class)
        .check(OURS);
  }

  @Test
  void the_browser_face_knows_contract_engine_and_interop() {
    classes().that().resideInAPackage("provender.browser")
        .should().onlyDependOnClassesThat(
            resideInAnyPackage(with("provender.browser", "provender.contract", "provender.engine..", "org.teavm..")))
        .check(OURS);
  }

  @Test
  void only_the_browser_face_has_javascript_interop() {
    noClasses().that().resideOutsideOfPackage("provender.browser")
        .should().dependOnClassesThat().resideInAPackage("org.teavm..")
        .check(OURS);
  }

  @Test
  void how_entries_travel_knows_neither_http_nor_sql() {
    noClasses().that().resideInAPackage("provender.sync")
        .should().dependOnClassesThat().resideInAnyPackage("jakarta..", "java.sql..", "io.quarkus..", "io.vertx..",
            "provender.store", "provender.web", "provender.people", "provender.demo")
        .check(OURS);
  }

  @Test
  void people_know_neither_http_nor_sql() {
    noClasses().that().resideInAPackage("provender.people")
        .should().dependOnClassesThat().resideInAnyPackage("jakarta..", "java.sql..", "io.vertx..",
            "provender.store", "provender.web", "provender.sync", "provender.demo")
        .check(OURS);
  }

  @Test
  void photos_know_neither_http_nor_sql() {
    noClasses().that().resideInAPackage("provender.photo")
        .should().dependOnClassesThat().resideInAnyPackage("jakarta..", "java.sql..", "io.quarkus..", "io.vertx..",
            "provender.store", "provender.web", "provender.people", "provender.demo")
        .check(OURS);
  }

  @Test
  void only_the_store_touches_the_database_and_nobody_names_the_store() {
    noClasses().that().resideOutsideOfPackage("provender.store")
        .should().dependOnClassesThat().resideInAnyPackage("jakarta.persistence..", "io.quarkus.hibernate..",
            "java.sql..", "provender.store")
        .check(OURS);
  }

  @Test
  void only_the_web_speaks_http() {
    noClasses().that().resideOutsideOfPackage("provender.web")
        .should().dependOnClassesThat().resideInAnyPackage("jakarta.ws.rs..", "io.vertx..")
        .check(OURS);
  }

  @Test
  void only_the_mail_package_speaks_to_a_mail_server_and_nobody_names_it() {
    noClasses().that().resideOutsideOfPackage("provender.mail")
        .should().dependOnClassesThat().resideInAnyPackage("io.quarkus.mailer..", "provender.mail")
        .check(OURS);
  }

  @Test
  void reading_the_tables_knows_nothing_of_the_rest() {
    classes().that().resideInAPackage("provender.reference")
        .should().onlyDependOnClassesThat(
            resideInAnyPackage("provender.reference", "java..", "com.fasterxml.jackson..", "org.jspecify..")
                .or(not(resideInAnyPackage("provender.."))))
        .check(OURS);
  }

  @Test
  void saying_it_in_words_needs_only_the_sentences() {
    classes().that().resideInAPackage("provender.report")
        .should().onlyDependOnClassesThat(resideInAnyPackage("provender.report", "java..", "com.fasterxml.jackson..", "org.jspecify.."))
        .check(OURS);
  }

  @Test
  void the_engine_is_built_in_layers_without_a_cycle() {
    slices().matching("provender.engine.(*)..").should().beFreeOfCycles().check(OURS);
  }

  @Test
  void nobody_is_called_a_helper() {
    noClasses().should().haveSimpleNameEndingWith("Util")
        .orShould().haveSimpleNameEndingWith("Helper")
        .orShould().haveSimpleNameEndingWith("Manager")
        .orShould().haveSimpleNameEndingWith("Impl")
        .check(OURS);
  }

  @Test
  void every_package_says_which_question_it_answers_and_refuses_nulls() throws Exception {
    try (var folders = Files.walk(Path.of("src/main/java/provender"))) {
      List<Path> packages = folders.filter(Files::isDirectory).filter(BordersTest::hasClasses).toList();
      assertThat(packages).hasSizeGreaterThan(10).allSatisfy(folder ->
          assertThat(folder.resolve("package-info.java")).exists().content().contains("@NullMarked").contains("?"));
    }
  }

  private static boolean hasClasses(Path folder) {
    String[] files = folder.toFile().list((dir, name) -> name.endsWith(".java"));
    return files != null && files.length > 0;
  }

  private static String[] with(String... more) {
    String[] all = Arrays.copyOf(PURE_JAVA, PURE_JAVA.length + more.length);
    System.arraycopy(more, 0, all, PURE_JAVA.length, more.length);
    return all;
  }
}
