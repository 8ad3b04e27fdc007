package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import provender.engine.reference.Reference;
import provender.engine.source.Constant;
import provender.engine.source.Constants;
import provender.engine.source.Step;
import provender.engine.water.Course;
import provender.engine.water.Exchanges;
import provender.engine.water.Ions;
import provender.engine.water.Load;

/** {@code nutrients}: what a day's food brings into so much water, and what nitrate and phosphate come to. */
final class NutrientsCall {
  private static final double MOST_LITRES = 100_000_000;
  private static final double MOST_GRAMS = 10_000_000;
  private static final double MOST_MG_L = 10_000;
  private static final int MOST_DAYS = 3650;
  private static final double MG = 1000;

  private NutrientsCall() {}

  /** Food of a day, added up: grams, protein, phosphorus. */
  private record Fed(double grams, double protein, double phosphorus) {}

  /** One ion's own part of the request. */
  private record Asked(double retention, double removal, double export, double start, double source, double wanted) {}

  static Map<String, Object> answer(Question asked, Reference reference) {
    Constants constants = reference.constants();
    Ions ions = Ions.of(constants);
    double volume = asked.positive("volumeLitres", MOST_LITRES);
    Fed fed = fed(asked);
    double uneaten = asked.numberOr("uneatenFraction", 0, 1, 0);
    int days = (int) asked.wholeOr("days", 1, MOST_DAYS, 28);
    Question exchange = asked.inner("exchange");
    double fraction = exchange == null ? 0 : exchange.number("fraction", 0, 1);
    int every = exchange == null ? 1 : (int) exchange.wholeOr("everyDays", 1, MOST_DAYS, 7);
    Parts parts = new Parts(asked, exchange);
    Asked nitrate = parts.of("n", "nitrate", "Nitrate");
    Asked phosphate = parts.of("p", "phosphate", "Phosphate");
    parts.nothingElse();
    if (exchange != null) {
      exchange.nothingElse();
    }
    asked.nothingElse();
    if (asked.isFaulty()) {
      return Map.of();
    }
    Load nitrogen = Load.of(Load.nitrogen(fed.protein(), constants), uneaten, nitrate.retention());
    Load phosphorus = Load.of(fed.phosphorus(), uneaten, phosphate.retention());
    double tan = Load.ammoniaNitrogen(fed.protein(), constants);
    double carbonate = tan * ions.carbonatePerNitrogen() * MG / volume;
    return Shapes.object(
        "nitrogen", load(nitrogen),
        "phosphorus", load(phosphorus),
        "nitrate", course(nitrogen.released() * ions.nitratePerNitrogen() * MG / volume, nitrate, fraction, every, days),
        "phosphate", course(phosphorus.released() * ions.phosphatePerPhosphorus() * MG / volume, phosphate, fraction, every, days),
        "ammoniaNitrogenGramsPerDay", tan,
        "alkalinityMgLPerDay", carbonate,
        "alkalinityDkhPerDay", carbonate / constants.value(Constant.CARBONATE_MG_PER_DKH),
        "oxygenGramsPerDay", tan * ions.oxygenPerNitrogen(),
        "why", Shapes.steps(why(fed, nitrogen, phosphorus, volume, ions, constants)));
  }

  private static Fed fed(Question asked) {
    double grams = 0;
    double protein = 0;
    double phosphorus = 0;
    for (Question feed : asked.list("feeds")) {
      double given = feed.number("gramsPerDay", 0, MOST_GRAMS);
      double proteinPart = part(feed, "proteinFraction");
      double phosphorusPart = part(feed, "phosphorusFraction");
      feed.nothingElse();
      grams += given;
      protein += given * proteinPart;
      phosphorus += given * phosphorusPart;
    }
    return new Fed(grams, protein, phosphorus);
  }

  /** Per cent written for a fraction is the usual slip. */
  private static double part(Question feed, String name) {
    double part = feed.number(name, 0, 100);
    return part > 1 ? feed.refuse(name, "a fraction from 0 to 1: did you mean per cent divided by 100?") : part;
  }

  /** Reads what stands twice in a request, once for each ion. */
  private static final class Parts {
    private final Question asked;
    private final @Nullable Question exchange;
    private final List<Question> inner = new ArrayList<>();
    private final @Nullable Question retention;
    private final @Nullable Question removal;
    private final @Nullable Question export;
    private final @Nullable Question start;
    private final @Nullable Question wanted;

    Parts(Question asked, @Nullable Question exchange) {
      this.asked = asked;
      this.exchange = exchange;
      this.retention = opened("retention");
      this.removal = opened("exportPerDay");
      this.export = opened("exportMgLPerDay");
      this.start = opened("start");
      this.wanted = opened("wantedPeak");
    }

    private @Nullable Question opened(String name) {
      Question question = asked.inner(name);
      if (question != null) {
        inner.add(question);
      }
      return question;
    }

    Asked of(String element, String ion, String capital) {
      return new Asked(
          or(retention, element, 1, 0),
          or(removal, ion, 10, 0),
          or(export, ion, MOST_MG_L, 0),
          or(start, ion + "MgL", MOST_MG_L, 0),
          or(exchange, "source" + capital + "MgL", MOST_MG_L, 0),
          or(wanted, ion + "MgL", MOST_MG_L, Double.NaN));
    }

    private static double or(@Nullable Question question, String name, double most, double otherwise) {
      return question == null ? otherwise : question.numberOr(name, 0, most, otherwise);
    }

    void nothingElse() {
      for (Question question : inner) {
        question.nothingElse();
      }
    }
  }

  private static Map<String, Object> load(Load load) {
    return Shapes.object(
        "givenGramsPerDay", load.given(), "retainedGramsPerDay", load.retained(), "releasedGramsPerDay", load.released());
  }

  private static Map<String, Object> course(double input, Asked asked, double fraction, int every, int days) {
    Exchanges exchanges = new Exchanges(fraction, every, asked.source());
    double rate = input - asked.export();
    double peak = exchanges.steadyPeak(rate, asked.removal());
    boolean settles = !Double.isInfinite(peak);
    List<Object> series = new ArrayList<>();
    for (double level : Course.over(days, asked.start(), rate, asked.removal(), exchanges)) {
      series.add(level);
    }
    double needed = Double.isNaN(asked.wanted()) ? Double.NaN : exchanges.fractionFor(asked.wanted(), rate);
    return Shapes.object(
        "inputMgLPerDay", input,
        "netMgLPerDay", rate,
        "endOfDayMgL", series,
        "steadyPeakMgL", settles ? peak : Double.NaN,
        "steadyTroughMgL", settles ? exchanges.steadyTrough(peak) : Double.NaN,
        "exchangeFractionForWantedPeak", Double.isInfinite(needed) ? Double.NaN : needed,
        "settles", settles);
  }

  private static List<Step> why(Fed fed, Load nitrogen, Load phosphorus, double volume, Ions ions, Constants constants) {
    Step in =
        Step.of(
            "nitrogenIn",
            "protein / 6.25",
            nitrogen.given(),
            "g/d",
            constants.source(Constant.PROTEIN_PER_NITROGEN),
            Step.input("protein", fed.protein(), "g/d"),
            constants.input(Constant.PROTEIN_PER_NITROGEN));
    Step nitrate =
        Step.of(
            "nitrateRise",
            "N released × NO₃/N × 1000 / volume",
            nitrogen.released() * ions.nitratePerNitrogen() * MG / volume,
            "mg/L/d",
            constants.source(Constant.ATOMIC_N),
            Step.input("released", nitrogen.released(), "g/d"),
            Step.input("perElement", ions.nitratePerNitrogen(), "1"),
            Step.input("volume", volume, "L"));
    Step phosphate =
        Step.of(
            "phosphateRise",
            "P released × PO₄/P × 1000 / volume",
            phosphorus.released() * ions.phosphatePerPhosphorus() * MG / volume,
            "mg/L/d",
            constants.source(Constant.ATOMIC_P),
            Step.input("released", phosphorus.released(), "g/d"),
            Step.input("perElement", ions.phosphatePerPhosphorus(), "1"),
            Step.input("volume", volume, "L"));
    return List.of(in, nitrate, phosphate);
  }
}
