package provender.vectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import provender.contract.Calculation;
import provender.engine.node.MapNode;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;
import provender.vectors.Vectors.Vector;

class VectorsTest {
  private static final Reference REFERENCE = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));

  @TestFactory
  Stream<DynamicTest> the_engine_answers_every_vector() {
    return Vectors.all().stream()
        .map(vector -> DynamicTest.dynamicTest(vector.call() + ": " + vector.name(), () ->
            assertThat(Vectors.differences(vector.expect(), answer(vector))).isEmpty()));
  }

  @Test
  void there_are_vectors_and_each_names_its_source() {
    assertThat(Vectors.all()).hasSizeGreaterThan(20).allSatisfy(one -> assertThat(one.source()).isNotBlank());
  }

  @Test
  void a_vector_changed_on_purpose_fails() {
    Vector first = Vectors.all().stream().filter(one -> one.call().equals("meal-shares")).findFirst().orElseThrow();
    Map<String, Object> wrong = Map.of("leftoverGrams", 0.001);
    assertThat(Vectors.differences(wrong, answer(first))).isEqualTo(List.of(".leftoverGrams is 0.0, expected 0.001"));
  }

  private static Map<String, Object> answer(Vector vector) {
    return Calculation.answer(vector.call(), new MapNode(vector.input()), REFERENCE);
  }
}
