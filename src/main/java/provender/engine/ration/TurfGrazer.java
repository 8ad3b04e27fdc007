package provender.engine.ration;

import provender.engine.source.Constant;
import provender.engine.source.Constants;

/**
 * A tang on natural turf: how much it must eat so that neither carbon, nitrogen nor phosphorus falls short (Schiettekatte
 * et al. 2020, parameters of Zebrasoma scopas). It eats for nitrogen, about twice its energy need, which is why
 * percent-of-body figures from algae say nothing about rich food.
 *
 * @param gainGrams growth in grams a day
 * @param energyKj whole metabolism, in kJ a day
 * @param dryByCarbon grams of dry turf a day that cover carbon; likewise nitrogen and phosphorus
 */
public record TurfGrazer(
    double grams, double gainGrams, double energyKj, double dryByCarbon, double dryByNitrogen, double dryByPhosphorus) {
  private static final double DAYS_PER_YEAR = 365;
  private static final double JOULES = 1000;
  // Cost of a gram gained in J, exp(4.38 + 0.1032 ln T + 0.73 ln trophic level + 0.41 ln(fin ratio + 1)): the model's own regression.
  private static final double COST = 4.38;
  private static final double COST_WARMTH = 0.1032;
  private static final double COST_TROPHIC = 0.73;
  private static final double COST_FIN = 0.41;

  /** The length that goes with a mass, in cm. */
  public static double lengthCm(double grams, Constants c) {
    return Math.pow(grams / c.value(Constant.TANG_LWA), 1 / c.value(Constant.TANG_LWB));
  }

  /** @param lengthCm total length, below the greatest length of the growth curve */
  public static TurfGrazer of(double lengthCm, double temperatureC, Constants c) {
    double a = c.value(Constant.TANG_LWA);
    double b = c.value(Constant.TANG_LWB);
    double longest = c.value(Constant.TANG_LINF_CM);
    double grams = a * Math.pow(lengthCm, b);
    double tomorrow = longest - (longest - lengthCm) * Math.exp(-c.value(Constant.TANG_K) / DAYS_PER_YEAR);
    double gain = a * Math.pow(tomorrow, b) - grams;
    double cost =
        Math.exp(
                COST
                    + COST_WARMTH * Math.log(temperatureC)
                    + COST_TROPHIC * Math.log(c.value(Constant.TANG_TROPHIC))
                    + COST_FIN * Math.log(c.value(Constant.TANG_FIN) + 1))
            / JOULES;
    double perCarbon = c.value(Constant.TANG_KJ_PER_G_C);
    double greatest = a * Math.pow(longest, b);
    double resting =
        c.value(Constant.TANG_F0) * perCarbon * Math.pow(greatest, c.value(Constant.TANG_ALPHA) - 1) * grams;
    double energy = c.value(Constant.TANG_SCOPE) * (resting + cost * gain);
    double dryPart = c.value(Constant.TANG_DRY_PART);
    double dryGain = gain * dryPart;
    double dryBody = grams * dryPart;
    return new TurfGrazer(
        grams,
        gain,
        energy,
        intake(dryGain * part(c, Constant.TANG_BODY_C) + energy / perCarbon, c, Constant.TANG_ASSIM_C, Constant.TANG_TURF_C),
        intake(
            part(c, Constant.TANG_BODY_N) * (dryGain + c.value(Constant.TANG_TURNOVER_N) * dryBody),
            c, Constant.TANG_ASSIM_N, Constant.TANG_TURF_N),
        intake(
            part(c, Constant.TANG_BODY_P) * (dryGain + c.value(Constant.TANG_TURNOVER_P) * dryBody),
            c, Constant.TANG_ASSIM_P, Constant.TANG_TURF_P));
  }

  /** Grams of dry turf a day that leave nothing short. */
  public double dryGrams() {
    return Math.max(dryByCarbon, Math.max(dryByNitrogen, dryByPhosphorus));
  }

  /** Which of the three it eats for. */
  public String limiting() {
    double most = dryGrams();
    return most == dryByNitrogen ? "nitrogen" : most == dryByCarbon ? "carbon" : "phosphorus";
  }

  private static double intake(double need, Constants c, Constant assimilated, Constant content) {
    return need / c.value(assimilated) / part(c, content);
  }

  private static double part(Constants c, Constant percent) {
    return c.value(percent) / 100;
  }
}
