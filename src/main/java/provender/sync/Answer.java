package provender.sync;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of one pushed entry.
 *
 * @param fields of a conflicted entry: those that stay as they stood until a person decides
 * @param faults of a refused entry
 */
public record Answer(String id, Outcome outcome, @Nullable Long seq, List<String> fields, List<Fault> faults) {

  public enum Outcome {
    ACCEPTED,
    DUPLICATE,
    CONFLICTED,
    REFUSED
  }

  /** A field that cannot be used as it is, and what it takes. */
  public record Fault(String field, String takes) {}

  static Answer accepted(String id, long seq) {
    return new Answer(id, Outcome.ACCEPTED, seq, List.of(), List.of());
  }

  static Answer duplicate(String id, long seq) {
    return new Answer(id, Outcome.DUPLICATE, seq, List.of(), List.of());
  }

  /** Kept like an accepted one, in its place; only its fields wait. */
  static Answer conflicted(String id, long seq, List<String> fields) {
    return new Answer(id, Outcome.CONFLICTED, seq, fields, List.of());
  }

  static Answer refused(String id, List<Fault> faults) {
    return new Answer(id, Outcome.REFUSED, null, List.of(), faults);
  }
}
