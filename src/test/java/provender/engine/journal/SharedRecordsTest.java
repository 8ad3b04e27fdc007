package provender.engine.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.fish.Fish;
import provender.engine.fish.Weight;
import provender.engine.node.MapNode;
import provender.engine.quantity.Day;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

class SharedRecordsTest {
  private static final Reference PUBLISHED = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));

  private final Journal journal = new Journal(PUBLISHED);

  @Test
  void a_change_that_was_taken_back_leaves_the_field_as_it_was_before() {
    change("c1", 1, "fish", "old-grey", Map.of("name", "Old grey", "lengthCm", 20.0));
    change("c2", 2, "fish", "old-grey", Map.of("lengthCm", 35.0));
    withdraw("w1", 3, "c2", true);

    assertThat(onlyFish().measurements()).singleElement().extracting("lengthCm").isEqualTo(20.0);

    withdraw("w2", 4, "c2", false);
    assertThat(onlyFish().measurements()).singleElement().extracting("lengthCm").isEqualTo(35.0);
  }

  @Test
  void a_record_whose_every_change_was_taken_back_never_was() {
    change("c1", 1, "fish", "old-grey", Map.of("name", "Old grey"));
    withdraw("w1", 2, "c1", true);

    assertThat(journal.tank().fish()).isEmpty();
  }

  @Test
  void a_species_the_tables_lack_is_weighed_by_its_family() {
    change("c1", 1, "fish", "stray", Map.of("species", "Acanthurus ignotus", "family", "Acanthuridae", "lengthCm", 15.0,
        "lengthErrorCm", 0.0, "guild", "omnivore"));

    // families.csv, Acanthuridae: W = 0.022816 L^2.97, so 15 cm weigh 71.0 g (the table's own median at 15 cm).
    assertThat(Weight.of(onlyFish(), Day.parse("2026-06-15"), PUBLISHED.constants()).grams().value())
        .isCloseTo(71.0, within(0.05));
  }

  private Fish onlyFish() {
    return journal.tank().fish().get(0);
  }

  private void change(String id, double seq, String record, String key, Map<String, ?> set) {
    journal.take(new MapNode(Map.of("id", id, "kind", "record", "happenedAt", "2026-06-15T08:10:00+02:00", "seq", seq,
        "body", Map.of("record", record, "key", key, "set", set))));
  }

  private void withdraw(String id, double seq, String entry, boolean withdrawn) {
    journal.take(new MapNode(Map.of("id", id, "kind", "withdrawal", "happenedAt", "2026-06-15T09:10:00+02:00", "seq", seq,
        "body", Map.of("entry", entry, "withdrawn", withdrawn))));
  }
}
