package provender.engine.today;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.feeder.AutoFeeder;
import provender.engine.food.Food;
import provender.engine.intake.Helping;
import provender.engine.intake.Meal;
import provender.engine.journal.Feeding;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;

/**
 * What the auto-feeders are reckoned to have given, as feedings beside those that people wrote down. Nothing of it is kept:
 * it follows from settings, weighings and fills, so it is the same on every copy and cannot be doubled.
 */
final class Dispensed {
  private Dispensed() {}

  /** From a day on and up to now, mixed in with the written ones, oldest first. */
  static List<Feeding> among(List<Feeding> written, List<AutoFeeder> feeders, Day first, Moment now, Reference reference) {
    if (feeders.isEmpty()) {
      return written;
    }
    List<Feeding> all = new ArrayList<>(written);
    Moment before = new Moment(first.plus(-1), 24 * 60 - 1, now.offsetMinutes());
    for (AutoFeeder feeder : feeders) {
      for (AutoFeeder.Fall fall : feeder.falls(before, now)) {
        all.add(Feeding.reckoned(fall.at(), meal(fall, feeder.throughput(fall.at()), reference)));
      }
    }
    all.sort((one, other) -> one.at().compareTo(other.at()));
    return all;
  }

  private static Meal meal(AutoFeeder.Fall fall, double throughput, Reference reference) {
    double grams = fall.count() * fall.drops().mean() * throughput;
    double parts = parts(fall.mix());
    List<Helping> helpings = new ArrayList<>();
    for (AutoFeeder.Part part : fall.mix()) {
      Food food = reference.food(part.food());
      helpings.add(new Helping(part.food(), food, grams * part.share() / parts, "", 0, List.of(), null));
    }
    return new Meal(helpings, 0, List.of());
  }

  private static double parts(List<AutoFeeder.Part> mix) {
    double sum = 0;
    for (AutoFeeder.Part part : mix) {
      sum += part.share();
    }
    return sum > 0 ? sum : 1;
  }

  /** Energy in one gram of what is in a hopper, in kJ; 0 where none of it is known. */
  static double kjPerGram(AutoFeeder.@Nullable Setting setting, Reference reference) {
    double kj = 0;
    if (setting != null) {
      for (AutoFeeder.Part part : setting.mix()) {
        Food food = reference.food(part.food());
        kj += food == null ? 0 : food.kjPerGram() * part.share() / parts(setting.mix());
      }
    }
    return kj;
  }
}
