package provender.engine.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import provender.engine.food.Component;
import provender.engine.node.MapNode;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

class OwnFoodsTest {
  private static final Reference PUBLISHED = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));

  private final Journal journal = new Journal(PUBLISHED);

  @Test
  void a_food_from_a_label_is_known_with_its_energy_and_its_parts() {
    write("food", "our-mash", Map.of("name", "Our mash", "waterGrams", 70.0, "proteinGrams", 15.0, "fatGrams", 3.0,
        "ashGrams", 4.0, "components", Map.of("crustacean", 0.6, "algae", 0.3)));

    var food = Objects.requireNonNull(journal.reference().food("our-mash"));
    // By hand, with the table's factors: 8 g of carbohydrate by difference, so
    // (15 × 23.6 × 0.9 + 3 × 39.5 × 0.95 + 8 × 17.2 × 0.6) / 100 kJ/g.
    assertThat(food.kjPerGram()).isCloseTo(5.137350, within(1e-6));
    assertThat(food.share(Component.CRUSTACEAN)).isEqualTo(0.6);
    assertThat(food.source()).isEqualTo("entered");
  }

  @Test
  void a_label_that_cannot_be_one_gives_no_food() {
    write("food", "too-full", Map.of("waterGrams", 60.0, "proteinGrams", 40.0, "fatGrams", 10.0));
    write("food", "negative", Map.of("waterGrams", 60.0, "proteinGrams", -1.0, "fatGrams", 10.0));

    assertThat(journal.reference().food("too-full")).isNull();
    assertThat(journal.reference().food("negative")).isNull();
  }

  /** Labels round: what adds up to 103 % is believed, what adds up to more is not; ash and fibre may be left out. */
  @Test
  void a_label_is_believed_up_to_its_edges() {
    write("food", "full", Map.of("waterGrams", 60.0, "proteinGrams", 33.0, "fatGrams", 4.0, "ashGrams", 6.0));
    write("food", "dry", Map.of("waterGrams", 0.0, "proteinGrams", 0.0, "fatGrams", 0.0, "fibreGrams", 0.0, "ashGrams", 0.0));
    write("food", "over", Map.of("waterGrams", 60.0, "proteinGrams", 33.0, "fatGrams", 4.0, "ashGrams", 6.5));
    write("food", "water", Map.of("waterGrams", 100.0, "proteinGrams", 0.0, "fatGrams", 0.0));
    write("food", "burnt", Map.of("waterGrams", 60.0, "proteinGrams", 1.0, "fatGrams", 1.0, "ashGrams", -1.0));
    write("food", "woody", Map.of("waterGrams", 60.0, "proteinGrams", 1.0, "fatGrams", 1.0, "fibreGrams", -1.0));
    write("food", "lean", Map.of("waterGrams", 60.0, "proteinGrams", 1.0, "fatGrams", -1.0));

    assertThat(journal.reference().food("full")).isNotNull();
    assertThat(journal.reference().food("dry")).isNotNull();
    for (String impossible : List.of("over", "water", "burnt", "woody", "lean")) {
      assertThat(journal.reference().food(impossible)).as(impossible).isNull();
    }
  }

  @Test
  void a_correction_of_a_label_counts_from_then_on_and_one_taken_back_does_not() {
    write("food", "mash", Map.of("waterGrams", 70.0, "proteinGrams", 10.0, "fatGrams", 3.0));
    double lean = Objects.requireNonNull(journal.reference().food("mash")).kjPerGram();
    write("food", "mash", Map.of("proteinGrams", 20.0));
    assertThat(Objects.requireNonNull(journal.reference().food("mash")).kjPerGram()).isGreaterThan(lean);
    journal.take(new MapNode(Map.of("id", "back", "kind", "withdrawal", "happenedAt", "2026-06-15T09:10:00+02:00", "seq", 9.0,
        "body", Map.of("entry", "mash" + Map.of("proteinGrams", 20.0), "withdrawn", true))));
    assertThat(Objects.requireNonNull(journal.reference().food("mash")).kjPerGram()).isEqualTo(lean);
  }

  @Test
  void measures_on_the_shelf_are_listed_and_those_put_away_are_not() {
    write("measure", "scoop", Map.of("name", "Scoop", "food", "pellet_small_soft", "grams", 1.8, "basis", "weighed"));
    write("measure", "lost", Map.of("name", "Lost", "food", "pellet_small_soft", "grams", 1.0, "status", "gone"));
    write("food", "mash", Map.of("name", "Our mash", "waterGrams", 70.0, "proteinGrams", 10.0, "fatGrams", 3.0));

    assertThat(journal.tank().measures()).singleElement().satisfies(scoop -> {
      assertThat(scoop.grams()).isEqualTo(1.8);
      assertThat(scoop.key()).isEqualTo("scoop");
    });
    assertThat(journal.tank().ownFoods()).singleElement().satisfies(mash -> assertThat(mash.name()).isEqualTo("Our mash"));
  }

  @Test
  void a_published_food_stays_what_it_is_whatever_a_keeper_writes_under_its_key() {
    write("food", "nori_dried", Map.of("waterGrams", 99.0, "proteinGrams", 0.0, "fatGrams", 0.0));

    assertThat(journal.reference().food("nori_dried")).isSameAs(PUBLISHED.food("nori_dried"));
  }

  @Test
  void a_food_put_away_leaves_the_shelf_but_old_feedings_keep_their_energy() {
    Map<String, Object> label = new HashMap<>(Map.of("name", "Our mash", "waterGrams", 70.0, "proteinGrams", 15.0, "fatGrams", 3.0));
    label.put("status", "gone");
    write("food", "our-mash", label);

    assertThat(journal.tank().ownFoods()).isEmpty();
    assertThat(journal.reference().food("our-mash")).isNotNull();
  }

  @Test
  void a_recipe_lists_its_foods_with_what_is_soaked_on_them() {
    write("recipe", "evening", Map.of("name", "Evening mix", "items",
        List.of(Map.of("food", "mysis_frozen", "grams", 12.0, "supplements", List.of("thiamine")))));

    assertThat(journal.tank().recipes()).singleElement().satisfies(recipe -> {
      assertThat(recipe.name()).isEqualTo("Evening mix");
      assertThat(recipe.items().get(0).texts("supplements")).containsExactly("thiamine");
    });
  }

  private double seq;

  private void write(String record, String key, Map<String, ?> set) {
    journal.take(new MapNode(Map.of("id", key + set, "kind", "record", "happenedAt", "2026-06-15T08:10:00+02:00", "seq", ++seq,
        "body", Map.of("record", record, "key", key, "set", set))));
  }
}
