package provender.engine.food;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import provender.engine.Log;
import provender.engine.source.Constants;
import provender.engine.source.Step;

/** 23.6, 39.5 and 17.2 kJ/g (Blaxter 1989; NRC 2011) and the digested parts that stand in the constants table. */
class FoodEnergyTest {
  private static final Constants CONSTANTS = Log.REFERENCE.constants();
  private static final Composition PELLET = new Composition(8, 45, 15, 22, 2, 10);

  @Test
  void energy_is_the_sum_of_protein_fat_and_carbohydrate_and_fibre_is_burnt_but_not_digested() {
    assertThat(FoodEnergy.grossKjPerGram(PELLET, CONSTANTS)).isEqualTo((45 * 23.6 + 15 * 39.5 + 22 * 17.2) / 100, offset(1e-9));
    assertThat(FoodEnergy.digestibleKjPerGram(PELLET, Digestibility.usual(CONSTANTS), CONSTANTS))
        .isEqualTo((45 * 23.6 * 0.9 + 15 * 39.5 * 0.95 + 20 * 17.2 * 0.6) / 100, offset(1e-9));
  }

  @Test
  void flesh_has_one_figure_and_seaweed_a_wide_range_that_says_so() {
    Food flesh = food("dry", PELLET);
    assertThat(flesh.energy().range().low()).isEqualTo(flesh.energy().range().high());
    assertThat(flesh.energy().why()).extracting(Step::what).containsExactly("grossEnergy", "digestibleEnergy");
    Composition dried = new Composition(10, 20, 1, 55, 30, 14);
    Food weed = food("macroalgae", dried);
    double gross = FoodEnergy.grossKjPerGram(dried, CONSTANTS);
    assertThat(weed.energy().range().low()).isEqualTo(gross * 0.4, offset(1e-9));
    assertThat(weed.energy().range().high()).isEqualTo(gross * 0.7, offset(1e-9));
    Digestibility part = Digestibility.ofAlgae(CONSTANTS);
    assertThat(weed.energy().value()).isEqualTo(FoodEnergy.digestibleKjPerGram(dried, part, CONSTANTS), offset(1e-9));
    assertThat(weed.energy().why().get(1).source()).isEqualTo(CONSTANTS.source(provender.engine.source.Constant.ALGAE_DIGEST_PROTEIN));
  }

  @Test
  void only_what_can_be_eaten_of_a_gram_counts() {
    Food shell = new Food("shell", "mollusc", PELLET, 0.25, new double[Component.values().length], List.of(), "x", CONSTANTS);
    assertThat(shell.kjPerGram()).isEqualTo(shell.energy().value() * 0.25, offset(1e-12));
    assertThat(shell.dryPerGram()).isEqualTo(0.92 * 0.25, offset(1e-12));
    assertThat(shell.brings()).isEmpty();
  }

  @Test
  void carbohydrate_is_what_the_rest_leaves_and_never_less_than_nothing() {
    Composition label = Composition.byDifference(8, 45, 15, 2, 10);
    assertThat(label.carbohydrateGrams()).isEqualTo(22);
    assertThat(label.nfeGrams()).isEqualTo(20);
    assertThat(label.sumGrams()).isEqualTo(100);
    assertThat(label.dryFraction()).isEqualTo(0.92);
    assertThat(Composition.byDifference(60, 45, 0, 3, 0).carbohydrateGrams()).isZero();
    assertThat(Composition.byDifference(60, 45, 0, 3, 0).nfeGrams()).isZero();
  }

  @Test
  void components_are_shares_up_to_the_flags_and_known_by_their_key() {
    assertThat(Component.of("hard_shelled")).isEqualTo(Component.HARD_SHELLED);
    assertThat(Component.of("moonlight")).isNull();
    assertThat(Component.OTHER.isShare()).isTrue();
    assertThat(Component.HARD_SHELLED.isShare()).isFalse();
    for (Component component : Component.values()) {
      assertThat(Component.of(component.key())).isSameAs(component);
    }
  }

  /** Derived: wanted 0.8, 0.08 and 0.07; a food wholly of algae is the first choice, mysis 0.8 × 0.08 + 0.2 × 0.07 over 0.8. */
  @Test
  void a_guild_likes_best_what_it_wants_most_and_nothing_below_the_floor() {
    var grazers = requireNonNull(Log.REFERENCE.guild("turf_grazer"));
    assertThat(grazers.preference(requireNonNull(Log.REFERENCE.food("nori_dried")), 0.05)).isEqualTo(1, offset(1e-12));
    assertThat(grazers.preference(requireNonNull(Log.REFERENCE.food("mysis_frozen")), 0.05)).isEqualTo(0.078 / 0.8, offset(1e-9));
    assertThat(grazers.preference(food("dry", PELLET), 0.05)).isEqualTo(0.05);
  }

  private static Food food(String category, Composition composition) {
    return new Food("it", category, composition, 1, new double[Component.values().length], List.of(), "label", CONSTANTS);
  }
}
