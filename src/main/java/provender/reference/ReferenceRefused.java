package provender.reference;

import java.util.List;
import java.util.stream.Collectors;

/** The tables cannot be used; every fault found in them. */
public final class ReferenceRefused extends RuntimeException {
  private final transient List<Fault> faults;

  ReferenceRefused(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n", "reference tables refused:\n", "")));
    this.faults = List.copyOf(faults);
  }

  public List<Fault> faults() {
    return faults;
  }
}
