package provender.engine.intake;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.fish.Fish;
import provender.engine.food.Component;
import provender.engine.food.Composition;
import provender.engine.food.Food;

/** Who eats what of a meal: keeping practice, checked by hand. */
class TableTest {
  private static final double PRIOR = 3;
  private static final Food NORI = requireNonNull(Log.REFERENCE.food("nori_dried"));
  private static final Food NOTHING_IN_IT = new Food("water", "prepared", new Composition(100, 0, 0, 0, 0, 0), 1,
      new double[Component.values().length], List.of(), "label", Log.REFERENCE.constants());

  private final List<Fish> fish = new ArrayList<>();
  private final List<Sighting> seen = new ArrayList<>();

  private TableTest with(String key, double dominance) {
    fish.add(new Fish(key, key, "x", null, requireNonNull(Log.REFERENCE.guild("turf_grazer")), 1, false, true, dominance, null, List.of()));
    return this;
  }

  private List<Serving> serve(double mostKj, Meal... meals) {
    Table table = new Table(fish, new Preferences(fish, 0.05, new Sightings(seen, PRIOR)));
    for (int line = 0; line < fish.size(); line++) {
      table.seat(line, 1, mostKj);
    }
    List<Serving> servings = new ArrayList<>();
    for (Meal meal : meals) {
      table.serve(meal, serving -> servings.add(serving.kept()));
    }
    return servings;
  }

  private static Meal meal(double leftover, List<String> refusedBy, Helping... helpings) {
    return new Meal(List.of(helpings), leftover, refusedBy);
  }

  private static Helping nori(double grams, @Nullable String to) {
    return new Helping("nori_dried", NORI, grams, "", 0, List.of(), to);
  }

  @Test
  void alike_fish_share_alike_and_a_dominant_one_takes_twice_as_much() {
    Serving one = with("a", 1).with("b", 1).with("c", 2).serve(1000, meal(0, List.of(), nori(4, null))).get(0);
    assertThat(one.gramsEaten()).containsExactly(new double[] {1, 1, 2}, offset(1e-12));
    assertThat(one.kj(2)).isEqualTo(2 * NORI.kjPerGram(), offset(1e-12));
    assertThat(one.meal()).isEqualTo(1);
  }

  @Test
  void what_was_left_over_was_not_eaten_and_more_cannot_be_left_than_was_given() {
    assertThat(with("a", 1).serve(1000, meal(1, List.of(), nori(4, null))).get(0).gramsEaten()).containsExactly(new double[] {3}, offset(1e-12));
    assertThat(serve(1000, meal(9, List.of(), nori(4, null))).get(0).gramsEaten()).containsExactly(0);
  }

  @Test
  void a_full_fish_takes_no_more_at_the_next_meal_of_the_day() {
    double most = 3 * NORI.kjPerGram();
    List<Serving> two = with("a", 1).serve(most, meal(0, List.of(), nori(2, null)), meal(0, List.of(), nori(2, null)));
    assertThat(two.get(0).gramsEaten()[0]).isEqualTo(2, offset(1e-12));
    assertThat(two.get(1).gramsEaten()[0]).isEqualTo(1, offset(1e-12));
    assertThat(two.get(1).meal()).isEqualTo(2);
  }

  @Test
  void what_is_handed_to_a_fish_is_that_fishs_and_takes_its_room() {
    List<Serving> two = with("a", 1).with("b", 1).serve(3 * NORI.kjPerGram(), meal(0, List.of(), nori(3, "b")), meal(0, List.of(), nori(2, null)));
    assertThat(two.get(0).gramsEaten()).containsExactly(0, 3);
    assertThat(two.get(1).gramsEaten()).containsExactly(new double[] {2, 0}, offset(1e-12));
    assertThat(serve(1000, meal(0, List.of("b"), nori(3, "b"))).get(0).gramsEaten()).containsExactly(0, 0);
    assertThat(serve(1000, meal(2, List.of(), nori(3, "b"))).get(0).gramsEaten()).containsExactly(0, 3);
  }

  @Test
  void refused_is_refused_and_nothing_is_served_of_nothing() {
    assertThat(with("a", 1).with("b", 1).serve(1000, meal(0, List.of("a"), nori(2, null))).get(0).gramsEaten())
        .containsExactly(new double[] {0, 2}, offset(1e-12));
    assertThat(serve(1000, meal(0, List.of(), nori(0, null)))).isEmpty();
    assertThat(serve(1000, meal(0, List.of(), new Helping("moonlight", null, 2, "", 0, List.of(), null)))).isEmpty();
    assertThat(serve(1000, meal(0, List.of(), new Helping("water", NOTHING_IN_IT, 2, "", 0, List.of(), null)))).isEmpty();
  }

  /** (3 + 1) / (3 + 1 + 4) of its guild's liking: half as much as one nobody watched. */
  @Test
  void what_people_saw_moves_how_readily_a_fish_takes_a_food() {
    for (int i = 0; i < 4; i++) {
      seen.add(new Sighting("a", "nori_dried", false, i));
    }
    seen.add(new Sighting("a", "nori_dried", true, 4));
    seen.add(new Sighting("a", "mysis_frozen", true, 4));
    assertThat(new Sightings(seen, PRIOR).liking("a", "nori_dried")).isEqualTo(4.0 / 8);
    assertThat(new Sightings(seen, PRIOR).liking("b", "nori_dried")).isEqualTo(1);
    assertThat(new Sightings(seen, PRIOR).liking("a", "mysis_frozen")).isEqualTo(1);
    assertThat(with("a", 1).with("b", 1).serve(1000, meal(0, List.of(), nori(3, null))).get(0).gramsEaten())
        .containsExactly(new double[] {1, 2}, offset(1e-12));
  }

  @Test
  void a_fish_in_isolation_eats_nothing_of_the_common_table() {
    with("a", 1);
    fish.add(new Fish("new", "new", "x", null, requireNonNull(Log.REFERENCE.guild("turf_grazer")), 1, true, true, 1, null, List.of()));
    assertThat(serve(1000, meal(0, List.of(), nori(3, null))).get(0).gramsEaten()).containsExactly(new double[] {3, 0}, offset(1e-12));
  }

  @Test
  void what_people_saw_in_the_log_counts_by_fish_and_food() {
    Log log = new Log().tank(27).fish("a", "Zebrasoma flavescens", 100).fish("b", "Zebrasoma flavescens", 100)
        .saw(0, "a", "refused", Map.of("food", "nori_dried")).saw(0, "a", "refused", Map.of("food", "nori_dried")).saw(0, "a", "refused", Map.of("food", "nori_dried"))
        .saw(0, "b", "ate", Map.of("food", "nori_dried")).saw(0, "a", "refused", Map.of());
    log.entry("withdrawal", 0, "10:00", Map.of("entry", log.last(), "withdrawn", true));
    log.fed(1, "08:00", Log.helping("nori_dried", 0.3));
    List<Map<String, Object>> shares = log.sharesOfLast(1);
    assertThat((Double) shares.get(0).get("grams")).isEqualTo(0.1, offset(1e-9));
    assertThat((Double) shares.get(1).get("grams")).isEqualTo(0.2, offset(1e-9));
  }
}
