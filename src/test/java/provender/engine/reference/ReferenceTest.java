package provender.engine.reference;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import provender.engine.fish.Band;
import provender.engine.fish.Guild;
import provender.engine.fish.LengthWeight;
import provender.engine.fish.Species;
import provender.engine.food.Component;
import provender.engine.food.Food;
import provender.engine.node.MapNode;
import provender.engine.ration.PublishedModel;
import provender.engine.source.Constant;
import provender.reference.ReferenceFiles;

/** What a row of the tables becomes; the numbers are those of shared/reference. */
class ReferenceTest {
  private final Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>(ReferenceFiles.onClasspath().read());

  private Reference reference() {
    return Reference.of(new MapNode(tables));
  }

  /** One more row in a table, the columns given as name, value, name, value. */
  private void add(String table, Object... columns) {
    Map<String, Object> row = new LinkedHashMap<>();
    for (int i = 0; i < columns.length; i += 2) {
      row.put(String.valueOf(columns[i]), columns[i + 1]);
    }
    List<Map<String, Object>> rows = new ArrayList<>(requireNonNull(tables.get(table)));
    rows.add(row);
    tables.put(table, rows);
  }

  @Test
  void a_constant_has_its_value_its_range_and_its_first_source() {
    Reference read = reference();
    assertThat(read.constants().range(Constant.MAINTENANCE_KJ)).hasToString("Range[low=30.0, value=40.0, high=70.0]");
    assertThat(read.constants().source(Constant.MAINTENANCE_KJ)).isEqualTo("lupatsch2013");
    assertThat(read.constants().range(Constant.ALARM_C)).hasToString("Range[low=32.0, value=32.0, high=32.0]");
    assertThat(read.constants().input(Constant.GLASS_LENGTH_ERROR_CM).unit()).isEqualTo("cm");
    assertThat(read.constants().input(Constant.GLASS_LENGTH_ERROR_CM).name()).isEqualTo("glass_length_error_cm");
  }

  @Test
  void tables_that_lack_a_constant_are_refused() {
    tables.put("constants", List.of());
    assertThatIllegalArgumentException().isThrownBy(this::reference).withMessageContaining("lacks maintenance_kj");
  }

  @Test
  void a_food_knows_its_parts_its_flags_and_what_of_it_can_be_eaten() {
    Food mysis = requireNonNull(reference().food("mysis_frozen"));
    assertThat(mysis.share(Component.PLANKTON)).isEqualTo(0.8, offset(1e-12));
    assertThat(mysis.share(Component.CRUSTACEAN)).isEqualTo(0.2, offset(1e-12));
    assertThat(mysis.share(Component.ALGAE)).isZero();
    assertThat(mysis.share(Component.CAROTENOID)).isEqualTo(1);
    assertThat(mysis.share(Component.HARD_SHELLED)).isZero();
    assertThat(mysis.brings()).containsExactly(Component.CRUSTACEAN, Component.PLANKTON, Component.N3_HUFA, Component.CAROTENOID);
    assertThat(mysis.has("thiaminase")).isFalse();
    Food clam = requireNonNull(reference().food("clam_half_shell"));
    assertThat(clam.edibleFraction()).isEqualTo(0.33);
    assertThat(clam.has("thiaminase")).isTrue();
    assertThat(clam.dryPerGram()).isEqualTo(0.2102 * 0.33, offset(1e-9));
    assertThat(clam.category()).isEqualTo("mollusc");
    assertThat(clam.source()).isEqualTo("usda_sr26");
    assertThat(clam.composition().sumGrams()).isEqualTo(78.98 + 14.67 + 0.96 + 3.57 + 1.82, offset(1e-9));
    Food nori = requireNonNull(reference().food("nori_dried"));
    assertThat(nori.isAlgae()).isTrue();
    assertThat(nori.composition().dryFraction()).isEqualTo(0.961, offset(1e-9));
    assertThat(nori.edibleFraction()).isEqualTo(1);
  }

  @Test
  void a_part_nobody_knows_and_cells_left_empty_do_no_harm() {
    add("foods", "key", "odd", "component_shares", "moonlight:0.5|sponge:0.125||", "flags", "");
    add("guildComponents", "guild", "turf_grazer", "component", "moonlight");
    Food odd = requireNonNull(reference().food("odd"));
    assertThat(odd.brings()).containsExactly(Component.SPONGE);
    assertThat(odd.share(Component.SPONGE)).isEqualTo(0.125);
    assertThat(odd.source()).isEqualTo("practice");
    assertThat(odd.edibleFraction()).isEqualTo(1);
  }

  @Test
  void a_guild_has_its_bands_in_the_order_of_the_table() {
    Guild grazers = requireNonNull(reference().guild("turf_grazer"));
    assertThat(grazers.rationFactor()).isEqualTo(1.3);
    assertThat(grazers.rationSource()).isEqualTo("schiettekatte2022");
    assertThat(grazers.mealsPerDay()).isEqualTo(4);
    assertThat(grazers.warningLevel()).isEqualTo("info");
    assertThat(grazers.bands().get(0)).isEqualTo(new Band(Component.ALGAE, 0.6, 0.8, 0.95, 1, "randall1967"));
    assertThat(grazers.band(Component.SPONGE)).isNull();
    assertThat(requireNonNull(grazers.band(Component.ALGAE)).hasTarget()).isTrue();
    assertThat(new Band(Component.ALGAE, 0, 0, 1, 1, "").hasTarget()).isFalse();
    assertThat(new Band(Component.ALGAE, 0, Double.NaN, 1, 1, "").hasTarget()).isFalse();
  }

  @Test
  void a_species_relation_is_its_own_fit_else_the_table_scaled_to_real_fish_else_the_table_with_forty_percent() {
    LengthWeight fitted = requireNonNull(reference().species("Balistapus undulatus")).lengthWeight();
    assertThat(fitted.a()).isEqualTo(0.0219707);
    assertThat(fitted.b()).isEqualTo(2.987);
    assertThat(fitted.source()).isEqualTo("morat2020");
    assertThat(fitted.scatter().high()).isEqualTo(Math.exp(1.96 * 0.157), offset(1e-12));
    assertThat(fitted.scatter().low()).isEqualTo(Math.exp(-1.96 * 0.157), offset(1e-12));
    LengthWeight scaled = requireNonNull(reference().species("Zebrasoma scopas")).lengthWeight();
    assertThat(scaled.a()).isEqualTo(0.02455 * 0.997, offset(1e-12));
    assertThat(scaled.b()).isEqualTo(2.98);
    LengthWeight table = requireNonNull(reference().species("Pomacanthus imperator")).lengthWeight();
    assertThat(table.a()).isEqualTo(0.04677);
    assertThat(table.scatter()).hasToString("Range[low=0.6, value=1.0, high=1.4]");
    assertThat(table.source()).isEqualTo("schiettekatte2022");
    assertThat(table.lengthType()).isEqualTo("TL");
  }

  @Test
  void a_species_has_its_guild_its_greatest_length_and_how_often_its_teeth_want_something_hard() {
    Species puffer = requireNonNull(reference().species("Diodon holocanthus"));
    assertThat(puffer.guild()).isEqualTo("durophage");
    assertThat(puffer.family()).isEqualTo("Diodontidae");
    assertThat(puffer.commonName()).isEqualTo("longspined porcupinefish");
    assertThat(puffer.maxLengthCm()).isEqualTo(50);
    assertThat(puffer.hardFoodGapDays()).isEqualTo(3);
    assertThat(puffer.growth()).isNull();
    assertThat(requireNonNull(reference().species("Balistes vetula")).hardFoodGapDays()).isEqualTo(7);
    assertThat(requireNonNull(reference().species("Pomacanthus imperator")).hardFoodGapDays()).isZero();
    assertThat(requireNonNull(requireNonNull(reference().species("Zebrasoma scopas")).growth()).longestCm()).isEqualTo(19);
    assertThat(reference().species("Piscis ignotus")).isNull();
  }

  @Test
  void a_family_stands_in_with_the_band_of_a_table() {
    LengthWeight family = requireNonNull(reference().family("Acanthuridae"));
    assertThat(family.a()).isEqualTo(0.022816);
    assertThat(family.scatter().low()).isEqualTo(0.6, offset(1e-12));
    assertThat(family.source()).isEqualTo("fishbase_table2024");
  }

  @Test
  void a_rule_speaks_for_its_guilds_or_for_all_with_limit_window_and_foods() {
    DietRule kelp = reference().rule("too-much-kelp");
    assertThat(kelp.limit()).isEqualTo(0.05);
    assertThat(kelp.windowDays()).isEqualTo(7);
    assertThat(kelp.offerFoods()).containsExactly("nori_dried", "ulva_dried");
    assertThat(kelp.sources()).containsExactly("penglase2013", "teas2004");
    assertThat(kelp.severity()).isEqualTo("low");
    assertThat(kelp.sure()).isEqualTo("weak");
    assertThat(kelp.speaksFor("turf_grazer")).isTrue();
    DietRule sponge = reference().rule("no-sponge");
    assertThat(sponge.speaksFor("dwarf_angel")).isTrue();
    assertThat(sponge.speaksFor("turf_grazer")).isFalse();
    assertThat(sponge.windowDays()).isZero();
    assertThat(sponge.limit()).isNaN();
    assertThatIllegalArgumentException().isThrownBy(() -> reference().rule("no-moonlight")).withMessageContaining("no-moonlight");
  }

  @Test
  void published_lines_are_found_by_their_key() {
    PublishedModel seabream = requireNonNull(reference().model("seabream2003"));
    assertThat(seabream.line().coefficientKj().value()).isEqualTo(16.6);
    assertThat(seabream.line().source()).isEqualTo("lupatsch2003");
    assertThat(seabream.gross()).isFalse();
    assertThat(reference().modelKeys()).contains("seabream2003", "seabream1998", "clownfish2013", "barramundi", "resting1999");
    assertThat(reference().model("guesswork")).isNull();
  }

  @Test
  void own_foods_stand_beside_the_published_ones_and_never_in_their_place() {
    Reference published = reference();
    Food nori = requireNonNull(published.food("nori_dried"));
    Food mysis = requireNonNull(published.food("mysis_frozen"));
    Reference with = published.with(Map.of("mine", nori, "mysis_frozen", nori));
    assertThat(with.food("mine")).isSameAs(nori);
    assertThat(with.food("mysis_frozen")).isSameAs(mysis);
    assertThat(with.species("Zebrasoma scopas")).isNotNull();
    assertThat(published.with(Map.of())).isSameAs(published);
  }

  @Test
  void foods_that_bring_a_component_come_richest_first() {
    List<String> algae = reference().foodsWith(Component.ALGAE);
    assertThat(algae).contains("nori_dried", "pellet_small_soft").doesNotContain("mysis_frozen");
    assertThat(algae.indexOf("nori_dried")).isLessThan(algae.indexOf("pellet_small_soft"));
  }
}
