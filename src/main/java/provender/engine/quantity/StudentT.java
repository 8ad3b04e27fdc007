package provender.engine.quantity;

/** Quantiles of Student's t: the distribution through the incomplete beta function, turned round by bisection. */
public final class StudentT {
  private static final int STEPS = 200;
  private static final int FRACTION_STEPS = 300;
  private static final double TINY = 1e-300;
  private static final double CLOSE = 1e-15;
  /** Lanczos' series for Γ with g = 7 and nine terms; from memory, and held against NIST's tables by the tests. */
  private static final double[] LANCZOS = {
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
    12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7
  };

  private StudentT() {}

  /** The t that holds {@code confidence} of the distribution between −t and t. */
  public static double twoSided(double confidence, double degrees) {
    double tail = (1 - confidence) / 2;
    double low = 0;
    double high = 1;
    while (upperTail(high, degrees) > tail) {
      high *= 2;
    }
    for (int i = 0; i < STEPS && high - low > CLOSE * high; i++) {
      double middle = (low + high) / 2;
      if (upperTail(middle, degrees) > tail) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** The part of the distribution above t, t from 0 on. */
  public static double upperTail(double t, double degrees) {
    double x = degrees / (degrees + t * t);
    return incompleteBeta(degrees / 2, 0.5, x) / 2;
  }

  private static double incompleteBeta(double a, double b, double x) {
    if (x <= 0 || x >= 1) {
      return x <= 0 ? 0 : 1;
    }
    double front = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
    return x < (a + 1) / (a + b + 2) ? front * fraction(a, b, x) / a : 1 - front * fraction(b, a, 1 - x) / b;
  }

  /** The continued fraction of the incomplete beta function, by Lentz's method. */
  private static double fraction(double a, double b, double x) {
    double c = 1;
    double d = 1 / away(1 - (a + b) * x / (a + 1));
    double h = d;
    for (int m = 1; m <= FRACTION_STEPS; m++) {
      double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
      d = 1 / away(1 + even * d);
      c = away(1 + even / c);
      h *= d * c;
      double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
      d = 1 / away(1 + odd * d);
      c = away(1 + odd / c);
      h *= d * c;
      if (Math.abs(d * c - 1) < CLOSE) {
        break;
      }
    }
    return h;
  }

  private static double away(double value) {
    return Math.abs(value) < TINY ? TINY : value;
  }

  private static double lnGamma(double x) {
    double base = x + 6.5;
    double sum = LANCZOS[0];
    for (int i = 1; i < LANCZOS.length; i++) {
      sum += LANCZOS[i] / (x - 1 + i);
    }
    return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(base) - base + Math.log(sum);
  }
}
