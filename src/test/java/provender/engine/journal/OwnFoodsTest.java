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

  private void write(String record, String key, Map<String, ?> set) {
    journal.take(new MapNode(Map.of("id", key, "kind", "record", "happenedAt", "2026-06-15T08:10:00+02:00", "seq", 1.0,
        "body", Map.of("record", record, "key", key, "set", set))));
  }
}
