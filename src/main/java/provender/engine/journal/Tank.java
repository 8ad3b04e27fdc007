package provender.engine.journal;

import java.util.List;
import provender.engine.fish.Fish;

/** A tank as its keepers set it up: volume in litres and temperature in °C are NaN where nobody said. */
public record Tank(
    String name,
    double volumeLitres,
    double temperatureC,
    List<String> usualFoods,
    List<Fish> fish,
    List<Measure> measures) {

  /** A measure people use at this tank and the grams of one food it holds. */
  public record Measure(String key, String name, String food, double grams, boolean weighed) {}
}
