package provender.sync;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What became of one pushed entry. */
public record Answer(String id, Outcome outcome, @Nullable Long seq, List<Fault> faults) {

  public enum Outcome {
    ACCEPTED,
    DUPLICATE,
    REFUSED
  }

  /** A field that cannot be used as it is, and what it takes. */
  public record Fault(String field, String takes) {}

  static Answer accepted(String id, long seq) {
    return new Answer(id, Outcome.ACCEPTED, seq, List.of());
  }

  static Answer duplicate(String id, long seq) {
    return new Answer(id, Outcome.DUPLICATE, seq, List.of());
  }

  static Answer refused(String id, List<Fault> faults) {
    return new Answer(id, Outcome.REFUSED, null, faults);
  }
}
