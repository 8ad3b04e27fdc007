package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.node.Node;
import provender.engine.node.Patched;
import provender.engine.reference.Reference;

/** Single calculations, asked by name; the names, fields and answers are the public contract. */
public final class Calculation {
  private static final Map<String, Call> CALLS =
      Map.of(
          "weight", WeightCall::answer,
          "growth", GrowthCall::answer,
          "food-energy", FoodEnergyCall::answer,
          "ration", RationCall::answer,
          "meal-shares", MealSharesCall::answer,
          "selectivity", SelectivityCall::answer,
          "diet-balance", DietBalanceCall::answer,
          "drops", DropsCall::answer,
          "portions", PortionsCall::answer,
          "nutrients", NutrientsCall::answer);

  private Calculation() {}

  /** Reads a request; its answer is only looked at when no field was refused. */
  interface Call {
    Map<String, Object> answer(Question question, Reference reference);
  }

  public static boolean isKnown(String name) {
    return CALLS.containsKey(name);
  }

  /** The answer, or {@code {errors: [{field, takes}]}} with every field that could not be used. */
  public static Map<String, Object> answer(String name, Node input, Reference reference) {
    Call call = CALLS.get(name);
    if (call == null) {
      return refused(List.of(new Fault("name", "weight, growth, food-energy, ration, meal-shares, selectivity, diet-balance, drops, portions or nutrients")));
    }
    Question question = new Question(input);
    boolean sensitivity = Sensitivity.isKnownFor(name) && question.flag("sensitivity");
    Map<String, Object> answer = call.answer(question, reference);
    if (question.isFaulty()) {
      return refused(question.faults());
    }
    if (sensitivity) {
      Node plain = new Patched(input, Map.of("sensitivity", false));
      answer.put("sensitivity", Sensitivity.of(name, plain, answer, reference));
    }
    return answer;
  }

  private static Map<String, Object> refused(List<Fault> faults) {
    List<Object> errors = new ArrayList<>();
    for (Fault fault : faults) {
      errors.add(Shapes.object("field", fault.field(), "takes", fault.takes()));
    }
    return Shapes.object("errors", errors);
  }
}
