package provender.engine.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import provender.engine.Log;
import provender.engine.source.Constants;

/** The water's arithmetic against recomputed rows, each with its source. */
class WaterTest {
  private static final Constants CONSTANTS = Log.REFERENCE.constants();
  private static final Ions IONS = Ions.of(CONSTANTS);

  /** From the standard atomic masses (IUPAC, values from memory); texts use 4.427, 7.14 and 4.57. */
  @Test
  void ions_weigh_what_their_atoms_do() {
    assertThat(IONS.nitratePerNitrogen()).isEqualTo(4.4266, offset(0.00005));
    assertThat(IONS.phosphatePerPhosphorus()).isEqualTo(3.0661, offset(0.00005));
    assertThat(IONS.carbonatePerNitrogen()).isEqualTo(7.145, offset(0.0006));
    assertThat(IONS.oxygenPerNitrogen()).isEqualTo(4.569, offset(0.0006));
  }

  /** TAN = feed × protein × 0.092 (Timmons & Ebeling, through secondary material): 100 g of 45 % give 4.140 g; 32.2 to 46.0 g per kg at 35 to 50 %. */
  @ParameterizedTest
  @CsvSource({"45,7.200,4.140", "350,56.0,32.2", "450,72.0,41.4", "500,80.0,46.0"})
  void protein_brings_nitrogen_and_ammonia(double protein, double nitrogen, double tan) {
    assertThat(Load.nitrogen(protein, CONSTANTS)).isEqualTo(nitrogen, offset(1e-9));
    assertThat(Load.ammoniaNitrogen(protein, CONSTANTS)).isEqualTo(tan, offset(1e-9));
  }

  /** Cai et al. 2016: more than 80 % of feed nitrogen lost from cages; Summerfelt & Penne 2007: 12.0 to 44.1 % kept. */
  @Test
  void what_was_not_eaten_counts_in_full_and_only_growth_keeps_anything() {
    assertThat(Load.of(10, 0, 0).released()).isEqualTo(10);
    assertThat(Load.of(10, 0.25, 0.2).retained()).isEqualTo(1.5, offset(1e-12));
    assertThat(Load.of(10, 0.25, 0.2).released()).isEqualTo(8.5, offset(1e-12));
    assertThat(Load.of(10, 1, 0.441).released()).isEqualTo(10);
    assertThat(Load.of(10, 0, 0.441).released() / 10).isGreaterThan(1 - 0.441 - 1e-12);
    assertThat(Load.of(10, 0.05, 0.2).released() / 10).isGreaterThan(0.8);
  }

  /** The steady state by formula (derived) against four thousand cycles run day by day. */
  @ParameterizedTest
  @CsvSource({"1,0.20,14,0,0,70.00,56.00", "1,0.20,14,2,0,72.00,58.00", "1,0.20,14,0,0.03,24.10,19.28", "1,0.20,14,2,0.03,24.65,20.12"})
  void peak_and_trough_are_those_of_four_thousand_cycles(
      double rate, double fraction, int every, double source, double removal, double peak, double trough) {
    Exchanges exchanges = new Exchanges(fraction, every, source);
    double level = 0;
    for (int day = 1; day <= 4_000 * every; day++) {
      level = Course.next(level, rate, removal);
      if (day % every == 0 && day < 4_000 * every) {
        level = Course.exchanged(level, fraction, source);
      }
    }
    assertThat(exchanges.steadyPeak(rate, removal)).isEqualTo(level, offset(1e-9));
    assertThat(exchanges.steadyPeak(rate, removal)).isEqualTo(peak, offset(0.006));
    assertThat(exchanges.steadyTrough(exchanges.steadyPeak(rate, removal))).isEqualTo(trough, offset(0.006));
  }

  @Test
  void the_exchange_that_holds_a_wanted_peak_holds_it() {
    Exchanges any = new Exchanges(0.2, 14, 0);
    assertThat(any.fractionFor(50, 1)).isEqualTo(0.28, offset(1e-12));
    assertThat(new Exchanges(any.fractionFor(50, 1), 14, 0).steadyPeak(1, 0)).isEqualTo(50, offset(1e-9));
    assertThat(any.fractionFor(50, -1)).isZero();
    assertThat(any.fractionFor(50, 0)).isZero();
    assertThat(new Exchanges(0.2, 14, 60).fractionFor(50, 1)).isInfinite();
  }

  @Test
  void without_any_way_out_there_is_no_steady_peak() {
    assertThat(new Exchanges(0, 7, 0).steadyPeak(1, 0)).isInfinite();
    assertThat(new Exchanges(0, 7, 0).steadyPeak(-1, 0)).isZero();
    assertThat(new Exchanges(0.1, 7, 0).steadyPeak(-1, 0)).isZero();
    assertThat(new Exchanges(0, 7, 0).steadyPeak(1, 0.05)).isEqualTo(20, offset(1e-9));
  }

  /** 13.4 cycles to 95 % of the peak, 47.06 after five (derived). */
  @Test
  void a_new_tank_climbs_towards_its_peak() {
    double[] course = Course.over(14 * 14, 0, 1, 0, new Exchanges(0.2, 14, 0));
    assertThat(course[5 * 14 - 1]).isEqualTo(47.06, offset(0.006));
    assertThat(course[13 * 14 - 1]).isLessThan(0.95 * 70);
    assertThat(course[14 * 14 - 1]).isGreaterThan(0.95 * 70);
    assertThat(Course.next(0.5, -2, 0)).isZero();
  }

  @Test
  void tests_of_one_day_say_nothing_of_export() {
    ExportFit.Reading same = new ExportFit.Reading(1, 0, 0);
    assertThatIllegalArgumentException().isThrownBy(() -> ExportFit.of(new ExportFit.Reading[] {same, same, same}, new double[] {1, 2, 3}, 0.95));
  }
}
