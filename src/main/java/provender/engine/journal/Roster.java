package provender.engine.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Fish;
import provender.engine.fish.Guild;
import provender.engine.fish.LengthWeight;
import provender.engine.fish.Measurement;
import provender.engine.fish.Species;
import provender.engine.journal.SharedRecords.Field;
import provender.engine.node.Node;
import provender.engine.quantity.Day;
import provender.engine.quantity.Moment;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Step;

/** Reads the shared records and the observations of size into a tank with its fish. */
final class Roster {
  private static final double CUBIC_CM_PER_LITRE = 1000;
  private static final String FALLBACK_GUILD = "omnivore";
  private static final double LEAST_FACTOR = 0.25;
  private static final double MOST_FACTOR = 4;

  private final Reference reference;
  private final SharedRecords records;
  private final Timeline observations;

  Roster(Reference reference, SharedRecords records, Timeline observations) {
    this.reference = reference;
    this.records = records;
    this.observations = observations;
  }

  Tank tank() {
    List<String> tanks = records.keys("tank");
    Map<String, Field> fields = tanks.isEmpty() ? Map.of() : records.fields("tank", tanks.get(0));
    return new Tank(
        SharedRecords.text(fields, "name", ""),
        volume(fields),
        SharedRecords.number(fields, "temperatureC", Double.NaN),
        rationFactor(fields),
        within(fields, "feederPart", 0, 1),
        within(fields, "wantedNitrateMgL", 0, Double.MAX_VALUE),
        within(fields, "wantedPhosphateMgL", 0, Double.MAX_VALUE),
        SharedRecords.texts(fields.get("usualFoods")),
        fish(),
        Larder.measures(records),
        Larder.ownFoods(records),
        Larder.recipes(records));
  }

  /** As somebody stated it, else from the inner size of the tank less what rock and sand take up. */
  private static double volume(Map<String, Field> fields) {
    double filled = 1 - within(fields, "displacedPart", 0, 0.9);
    double cubicCm =
        within(fields, "innerLengthCm", 1, 100_000)
            * within(fields, "innerWidthCm", 1, 100_000)
            * within(fields, "waterHeightCm", 1, 100_000);
    double measured = cubicCm / CUBIC_CM_PER_LITRE * (Double.isNaN(filled) ? 1 : filled);
    return SharedRecords.number(fields, "volumeLitres", measured);
  }

  /** A number that can be meant, else NaN. */
  private static double within(Map<String, Field> fields, String name, double least, double most) {
    double number = SharedRecords.number(fields, name, Double.NaN);
    return number >= least && number <= most ? number : Double.NaN;
  }

  /** What a steward chose, within what any fish could live on; 1 for anything else. */
  private static double rationFactor(Map<String, Field> fields) {
    double factor = SharedRecords.number(fields, "rationFactor", 1);
    return factor >= LEAST_FACTOR && factor <= MOST_FACTOR ? factor : 1;
  }

  private List<Fish> fish() {
    List<Fish> fish = new ArrayList<>();
    for (String key : records.keys("fish")) {
      Fish one = fish(key);
      if (one != null) {
        fish.add(one);
      }
    }
    return fish;
  }

  private @Nullable Fish fish(String key) {
    Map<String, Field> fields = records.fields("fish", key);
    String speciesName = SharedRecords.text(fields, "species", "");
    Species species = species(speciesName, fields);
    Guild guild = reference.guild(SharedRecords.text(fields, "guild", species == null ? FALLBACK_GUILD : species.guild()));
    if (guild == null) {
      guild = reference.guild(FALLBACK_GUILD);
    }
    if (guild == null) {
      return null;
    }
    return new Fish(
        key,
        SharedRecords.text(fields, "name", key),
        speciesName,
        species,
        guild,
        (int) Math.max(1, SharedRecords.number(fields, "count", 1)),
        SharedRecords.text(fields, "place", "display").equals("isolation"),
        SharedRecords.text(fields, "status", "here").equals("here"),
        Math.max(0, SharedRecords.number(fields, "dominance", 1)),
        day(SharedRecords.text(fields, "arrivedOn", "")),
        left(fields.get("status")),
        measurements(key, fields));
  }

  private static @Nullable Day left(@Nullable Field status) {
    return status == null || "here".equals(status.value()) ? null : day(status.from().happenedAt());
  }

  /** A species of the tables; else one of the family its keeper named, of the greatest length they gave. */
  private @Nullable Species species(String name, Map<String, Field> fields) {
    Species known = reference.species(name);
    String family = SharedRecords.text(fields, "family", "");
    LengthWeight relation = reference.family(family);
    if (known != null || relation == null) {
      return known;
    }
    double usual = reference.constants().value(Constant.UNKNOWN_LENGTH_CM);
    double longest = SharedRecords.number(fields, "maxLengthCm", usual);
    String guild = SharedRecords.text(fields, "guild", FALLBACK_GUILD);
    return new Species(name, name, family, guild, longest, relation, 0, Step.PRACTICE, null);
  }

  /** The size in the roster counts as measured on its own date, or on the day it was entered. */
  private List<Measurement> measurements(String key, Map<String, Field> fields) {
    List<Measurement> measurements = new ArrayList<>();
    Field length = fields.get("lengthCm");
    Field weight = fields.get("weightGrams");
    if (length != null && positive(length.value())) {
      measurements.add(
          Measurement.length(
              measuredOn(fields, length),
              SharedRecords.number(fields, "lengthCm", 0),
              SharedRecords.number(fields, "lengthErrorCm", Double.NaN)));
    }
    if (weight != null && positive(weight.value())) {
      measurements.add(
          Measurement.weighed(measuredOn(fields, weight), SharedRecords.number(fields, "weightGrams", 0)));
    }
    for (Kept kept : observations.all()) {
      Entry entry = kept.entry();
      Moment at = kept.at();
      if (entry != null && at != null && !kept.isWithdrawn()) {
        Node body = kept.body(entry);
        if (body.text("fish", "").equals(key)) {
          add(measurements, body, at.day());
        }
      }
    }
    measurements.sort((one, other) -> one.on().compareTo(other.on()));
    return measurements;
  }

  private static void add(List<Measurement> measurements, Node body, Day on) {
    double cm = body.number("cm", 0);
    double grams = body.number("grams", 0);
    String saw = body.text("saw", "");
    if (saw.equals("length") && cm > 0) {
      measurements.add(Measurement.length(on, cm, body.number("errorCm", Double.NaN)));
    } else if (saw.equals("weight") && grams > 0) {
      measurements.add(Measurement.weighed(on, grams));
    }
  }

  private static Day measuredOn(Map<String, Field> fields, Field size) {
    Day stated = day(SharedRecords.text(fields, "measuredOn", ""));
    Day entered = day(size.from().happenedAt());
    return stated != null ? stated : entered != null ? entered : Day.of(0);
  }

  private static @Nullable Day day(String text) {
    if (text.isEmpty()) {
      return null;
    }
    try {
      return Day.parse(text);
    } catch (IllegalArgumentException unreadable) {
      return null;
    }
  }

  private static boolean positive(Object value) {
    return value instanceof Double number && number > 0 && !Double.isInfinite(number);
  }
}
