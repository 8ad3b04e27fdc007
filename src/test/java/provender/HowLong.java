package provender;

/** Fault tests run in a short form with every build and in a long one with {@code -Dfaults.long=true}. */
public final class HowLong {
  private static final boolean LONG = Boolean.getBoolean("faults.long");

  private HowLong() {}

  public static int times(int shortForm, int longForm) {
    return LONG ? longForm : shortForm;
  }
}
