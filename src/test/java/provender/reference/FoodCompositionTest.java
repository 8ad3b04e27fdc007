package provender.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Our foods against tables that had no part in them: the Indian Food Composition Tables 2017. Kind, season and place differ,
 * so the bands are wide: water within 7 g, protein within 5 g, fat within 5 g, ash within 2 g per 100 g.
 */
class FoodCompositionTest {
  private static final Map<String, List<Map<String, Object>>> TABLES = tables();

  @Test
  void water_protein_fat_and_ash_lie_near_those_of_independent_tables() throws IOException {
    List<Map<String, String>> rows = rows();
    assertThat(rows).hasSize(13).allSatisfy(row -> {
      Map<String, Object> food = food(text(row, "our_food"));
      near(row, food, "water", "water_g_per_100g", 7);
      near(row, food, "protein", "protein_g", 5);
      near(row, food, "fat", "fat_g", 5);
      near(row, food, "ash", "ash_g", 2);
    });
  }

  @Test
  void over_all_foods_the_differences_cancel_out() throws IOException {
    double water = rows().stream().mapToDouble(row -> number(food(text(row, "our_food")), "water_g_per_100g") - Double.parseDouble(text(row, "water"))).average().orElseThrow();
    double protein = rows().stream().mapToDouble(row -> number(food(text(row, "our_food")), "protein_g") - Double.parseDouble(text(row, "protein"))).average().orElseThrow();
    assertThat(water).isBetween(-1.5, 1.5);
    assertThat(protein).isBetween(-1.5, 1.5);
  }

  private static void near(Map<String, String> row, Map<String, Object> food, String theirs, String ours, double band) {
    double their = Double.parseDouble(text(row, theirs));
    assertThat(number(food, ours)).as(text(row, "our_food") + " " + theirs).isBetween(their - band, their + band);
  }

  private static double number(Map<String, Object> food, String column) {
    return (Double) food.get(column);
  }

  private static Map<String, Object> food(String key) {
    return Objects.requireNonNull(TABLES.get("foods")).stream().filter(row -> key.equals(row.get("key"))).findFirst().orElseThrow();
  }

  @SuppressWarnings("unchecked")
  private static Map<String, List<Map<String, Object>>> tables() {
    return (Map<String, List<Map<String, Object>>>) (Map<?, ?>) ReferenceFiles.onClasspath().read();
  }

  private static List<Map<String, String>> rows() throws IOException {
    var stream = Objects.requireNonNull(FoodCompositionTest.class.getResourceAsStream("/fixtures/indian-food-tables.csv"));
    CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
    try (MappingIterator<Map<String, String>> rows = new CsvMapper().readerForMapOf(String.class).with(schema).readValues(stream)) {
      return rows.readAll();
    }
  }

  private static String text(Map<String, String> row, String column) {
    return Objects.requireNonNull(row.get(column), column);
  }
}
