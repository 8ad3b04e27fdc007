package provender.engine.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.feeder.AutoFeeder;
import provender.engine.feeder.Drops;
import provender.engine.journal.SharedRecords.Field;
import provender.engine.node.Node;
import provender.engine.quantity.Moment;
import provender.engine.source.Constant;
import provender.engine.source.Constants;

/** Reads a tank's auto-feeders with their history out of its records, weighings and fills. */
final class Feeders {
  private static final int MINUTES_PER_DAY = 24 * 60;

  private final SharedRecords records;
  private final Timeline weighings;
  private final Timeline fills;
  private final Constants constants;

  Feeders(SharedRecords records, Timeline weighings, Timeline fills, Constants constants) {
    this.records = records;
    this.weighings = weighings;
    this.fills = fills;
    this.constants = constants;
  }

  List<AutoFeeder> all() {
    List<AutoFeeder> feeders = new ArrayList<>();
    for (String key : records.keys("feeder")) {
      Map<String, Field> fields = records.fields("feeder", key);
      if (!SharedRecords.text(fields, "status", "here").equals("gone")) {
        feeders.add(
            new AutoFeeder(
                key,
                SharedRecords.text(fields, "name", key),
                SharedRecords.number(fields, "hopperGrams", Double.NaN),
                SharedRecords.number(fields, "clearGrams", Double.NaN),
                Math.max(0, SharedRecords.number(fields, "share", 1)),
                settings(key),
                weighings(key),
                fills(key)));
      }
    }
    return feeders;
  }

  private List<AutoFeeder.Setting> settings(String key) {
    List<AutoFeeder.Setting> settings = new ArrayList<>();
    for (Moment from : records.moments("feeder", key)) {
      settings.add(setting(from, records.fieldsAt("feeder", key, from)));
    }
    return settings;
  }

  /** Times nobody can read are passed over with their drops. */
  private static AutoFeeder.Setting setting(Moment from, Map<String, Field> fields) {
    List<String> times = SharedRecords.texts(fields.get("times"));
    List<Double> drops = SharedRecords.numbers(fields.get("drops"));
    int[] minutes = new int[Math.min(times.size(), drops.size())];
    int[] counts = new int[minutes.length];
    int known = 0;
    for (int i = 0; i < minutes.length; i++) {
      int minute = minute(times.get(i));
      if (minute >= 0 && drops.get(i) >= 0) {
        minutes[known] = minute;
        counts[known++] = (int) Math.floor(drops.get(i));
      }
    }
    List<AutoFeeder.Part> mix = new ArrayList<>();
    for (Node part : SharedRecords.nodes(fields.get("mix"))) {
      mix.add(new AutoFeeder.Part(part.text("food", ""), Math.max(0, part.number("share", 0))));
    }
    Field runs = fields.get("running");
    boolean running = runs != null && Boolean.TRUE.equals(runs.value());
    return new AutoFeeder.Setting(from, running, first(minutes, known), first(counts, known), mix);
  }

  private static int[] first(int[] numbers, int count) {
    int[] first = new int[count];
    System.arraycopy(numbers, 0, first, 0, count);
    return first;
  }

  private static int minute(String time) {
    if (time.length() != 5 || time.charAt(2) != ':') {
      return -1;
    }
    int minute = 0;
    for (int i : new int[] {0, 1, 3, 4}) {
      int digit = time.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      minute += digit * (i == 0 ? 600 : i == 1 ? 60 : i == 3 ? 10 : 1);
    }
    return minute < MINUTES_PER_DAY ? minute : -1;
  }

  private List<AutoFeeder.Weighing> weighings(String key) {
    List<AutoFeeder.Weighing> found = new ArrayList<>();
    for (Kept kept : weighings.all()) {
      Node body = of(kept, key);
      Moment at = kept.at();
      if (body != null && at != null) {
        List<Double> grams = body.numbers("grams");
        boolean sound = grams.size() > 1;
        double[] each = new double[grams.size()];
        for (int i = 0; i < each.length; i++) {
          each[i] = grams.get(i);
          sound &= each[i] > 0;
        }
        if (sound) {
          int drops = (int) Math.max(1, body.number("dropsPerWeighing", 1));
          found.add(new AutoFeeder.Weighing(at, Drops.weighed(each, drops, constants.value(Constant.WATER_CONFIDENCE)), body.text("level", "")));
        }
      }
    }
    return found;
  }

  private List<AutoFeeder.Fill> fills(String key) {
    List<AutoFeeder.Fill> found = new ArrayList<>();
    for (Kept kept : fills.all()) {
      Node body = of(kept, key);
      Moment at = kept.at();
      if (body != null && at != null) {
        double left = body.number("leftGrams", Double.NaN);
        found.add(new AutoFeeder.Fill(at, left >= 0 ? left : Double.NaN, Math.max(0, body.number("addedGrams", 0))));
      }
    }
    return found;
  }

  private static @Nullable Node of(Kept kept, String feeder) {
    Entry entry = kept.entry();
    if (entry == null || kept.isWithdrawn()) {
      return null;
    }
    Node body = kept.body(entry);
    return body.text("feeder", "").equals(feeder) ? body : null;
  }
}
