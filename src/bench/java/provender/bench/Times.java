package provender.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Some runs of the same thing, in milliseconds. */
record Times(List<Double> runs) {
  Times() {
    this(new ArrayList<>());
  }

  void add(Object millis) {
    runs.add(((Number) millis).doubleValue());
  }

  double part(double part) {
    List<Double> sorted = runs.stream().sorted().toList();
    return sorted.isEmpty() ? 0 : sorted.get((int) Math.min(sorted.size() - 1, Math.ceil(sorted.size() * part) - 1));
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "median %4.0f ms   p95 %4.0f ms   most %4.0f ms   (%d runs)",
        part(0.5), part(0.95), part(1), runs.size());
  }
}
