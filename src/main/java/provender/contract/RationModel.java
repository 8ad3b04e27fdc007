package provender.contract;

import org.jspecify.annotations.Nullable;
import provender.engine.quantity.Range;
import provender.engine.ration.Model;
import provender.engine.ration.PublishedModel;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Step;

/**
 * The line a ration is asked to follow: a published one by its name, one's own coefficients, or the usual line.
 *
 * @param published null unless one was named
 * @param activity NaN unless one was asked for everyone
 * @param grows whether each fish grows as the published line says
 * @param onTurf whether they are tangs on natural turf, limited by nitrogen and not by energy
 */
record RationModel(Model line, @Nullable PublishedModel published, double activity, boolean grows, boolean onTurf) {
  static final String TURF = "turf2020";


  static RationModel read(@Nullable Question wanted, Reference reference) {
    Model usual = Model.usual(reference.constants());
    if (wanted == null) {
      return new RationModel(usual, null, Double.NaN, false, false);
    }
    double activity = wanted.numberOr("activity", 0.1, 10, Double.NaN);
    if (!wanted.has("name")) {
      Model own = own(wanted, usual);
      wanted.nothingElse();
      return new RationModel(own, null, activity, false, false);
    }
    String name = wanted.text("name");
    boolean grows = wanted.flag("growing");
    wanted.nothingElse();
    PublishedModel published = reference.model(name);
    if (published == null && !name.equals("usual") && !name.equals(TURF)) {
      wanted.refuse("name", "usual, turf2020 or one of " + String.join(", ", reference.modelKeys()));
    }
    if (grows && (published == null || Double.isNaN(published.gain().a()))) {
      wanted.refuse("growing", "false: this line has no growth of its own; give growthGramsPerDay instead");
    }
    return new RationModel(published == null ? usual : published.line(), published, activity, grows, name.equals(TURF));
  }

  /** The temperature that is reckoned with: never beyond what the line is known to hold for on the warm side. */
  double reckonedC(double temperatureC, Reference reference) {
    double most = published == null ? reference.constants().value(Constant.ALARM_C) : published.maxC();
    return Math.min(temperatureC, most);
  }

  String flag(double temperatureC, Reference reference) {
    if (temperatureC > reference.constants().value(Constant.ALARM_C)) {
      return "alarm";
    }
    double least = published == null ? reference.constants().value(Constant.MODEL_MIN_C) : published.minC();
    double most = published == null ? reference.constants().value(Constant.MODEL_MAX_C) : published.maxC();
    return temperatureC >= least && temperatureC <= most ? "inRange" : "outsideModel";
  }

  private static Model own(Question wanted, Model usual) {
    double middle = wanted.has("coefficientKj") ? wanted.positive("coefficientKj", 10_000) : Double.NaN;
    boolean own = !Double.isNaN(middle);
    double value = own ? middle : usual.coefficientKj().value();
    double low = wanted.numberOr("coefficientLowKj", 0, 10_000, own ? value : usual.coefficientKj().low());
    double high = wanted.numberOr("coefficientHighKj", 0, 10_000, own ? value : usual.coefficientKj().high());
    double exponent = wanted.numberOr("exponent", 0.1, 2, usual.exponent());
    double slope = wanted.numberOr("temperatureSlope", 0, 1, usual.temperatureSlope());
    double reference = wanted.numberOr("referenceC", 0, 40, usual.referenceC());
    if (low > value || high < value) {
      wanted.refuse("coefficientKj", "a number between coefficientLowKj and coefficientHighKj");
    }
    return wanted.isFaulty()
        ? usual
        : new Model(new Range(low, value, high), exponent, slope, reference, own ? Step.ENTERED : usual.source());
  }
}
