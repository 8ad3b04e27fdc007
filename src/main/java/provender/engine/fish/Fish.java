package provender.engine.fish;

import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Day;

/**
 * A fish of a tank, or a group of alike fish kept as one line of the roster.
 *
 * @param species as the tables know it, or null for one they lack
 * @param measurements oldest first
 * @param left the day on which somebody wrote that it had moved out or died
 * @param arrived null when it was there before the journal began
 */
public record Fish(
    String key,
    String name,
    String speciesName,
    @Nullable Species species,
    Guild guild,
    int count,
    boolean inIsolation,
    boolean isHere,
    double dominance,
    @Nullable Day arrived,
    @Nullable Day left,
    List<Measurement> measurements) {

  /** One that is here, or of which nobody knows since when it is not. */
  public Fish(
      String key, String name, String speciesName, @Nullable Species species, Guild guild, int count, boolean inIsolation,
      boolean isHere, double dominance, @Nullable Day arrived, List<Measurement> measurements) {
    this(key, name, speciesName, species, guild, count, inIsolation, isHere, dominance, arrived, null, measurements);
  }

  public boolean wasHereOn(Day day) {
    boolean notGone = isHere || left != null && day.isBefore(left);
    return notGone && (arrived == null || !day.isBefore(arrived));
  }

  /** Whether its mass is another every day, along its species' curve. */
  public boolean isGrowing() {
    return species != null && species.growth() != null;
  }

  /** Whether its size was looked at on a day, so that its mass may be another from then on. */
  public boolean wasMeasuredOn(Day day) {
    for (Measurement measurement : measurements) {
      if (measurement.on().equals(day)) {
        return true;
      }
    }
    return false;
  }

  /** The last measurement up to a day that passes; before the first one was taken, the first. */
  @Nullable Measurement lastWeighed(Day day) {
    return last(day, true);
  }

  @Nullable Measurement lastLength(Day day) {
    return last(day, false);
  }

  private @Nullable Measurement last(Day day, boolean weighed) {
    Measurement found = null;
    for (Measurement measurement : measurements) {
      boolean fits = weighed ? measurement.isWeighed() : measurement.hasLength();
      if (fits && (found == null || !day.isBefore(measurement.on()))) {
        found = measurement;
      }
    }
    return found;
  }
}
