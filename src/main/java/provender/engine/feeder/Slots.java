package provender.engine.feeder;

/**
 * A number of whole drops spread over the times of day of one feeder, as evenly as its bounds allow: the bounded integer
 * least squares of (drops − quota), found by giving the next drop to the time that is furthest below its quota.
 */
public final class Slots {
  private Slots() {}

  /** The times' bounds. */
  public record Bounds(int[] least, int[] most) {

    public static Bounds alike(int times, int least, int most) {
      int[] low = new int[times];
      int[] high = new int[times];
      for (int i = 0; i < times; i++) {
        low[i] = least;
        high[i] = most;
      }
      return new Bounds(low, high);
    }

    public int atLeast() {
      return sum(least);
    }

    public int atMost() {
      return sum(most);
    }

    private static int sum(int[] of) {
      int sum = 0;
      for (int one : of) {
        sum += one;
      }
      return sum;
    }
  }

  /** @param quotas what each time would get if drops could be cut; {@code drops} lies between the bounds' sums */
  public static int[] spread(int drops, double[] quotas, Bounds bounds) {
    int[] given = bounds.least().clone();
    for (int left = drops - bounds.atLeast(); left > 0; left--) {
      int next = -1;
      for (int i = 0; i < given.length; i++) {
        boolean room = given[i] < bounds.most()[i];
        if (room && (next < 0 || quotas[i] - given[i] > quotas[next] - given[next])) {
          next = i;
        }
      }
      given[next]++;
    }
    return given;
  }

  /** The same quota at each time. */
  public static int[] evenly(int drops, Bounds bounds) {
    double[] quotas = new double[bounds.least().length];
    for (int i = 0; i < quotas.length; i++) {
      quotas[i] = (double) drops / quotas.length;
    }
    return spread(drops, quotas, bounds);
  }
}
