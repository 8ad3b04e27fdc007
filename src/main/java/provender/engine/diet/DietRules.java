package provender.engine.diet;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.fish.Band;
import provender.engine.fish.Fish;
import provender.engine.fish.Species;
import provender.engine.food.Component;
import provender.engine.quantity.Day;
import provender.engine.reference.DietRule;
import provender.engine.source.Constant;
import provender.engine.source.Step;

/** The rules a diet is held against: one method each, named for what it asks. Keys and offers come from the tables. */
public final class DietRules {
  private DietRules() {}

  private interface Rule {
    List<Finding> look(Case looked);
  }

  private static final List<Rule> RULES =
      List.of(
          DietRules::grazersFindAlgaeEveryDay,
          DietRules::spongeGrazersGetSponge,
          DietRules::crushersGetSomethingHard,
          EnergyRules::nobodyGetsTooLittle,
          EnergyRules::nobodyGetsTooMuch,
          DietRules::theWaterIsNotTooWarm,
          PlantRules::grazersGetEnoughAlgae,
          PlantRules::kelpStaysASmallPart,
          PlantRules::greensOfTheLandDoNotReplaceAlgae,
          PlantRules::spinachStaysASmallPart,
          NutrientRules::thiamineGoesWithThiaminase,
          NutrientRules::vitaminEGoesWithOilyFish,
          NutrientRules::everyoneGetsMarineFattyAcids,
          NutrientRules::everyoneGetsVitaminC,
          NutrientRules::everyoneGetsIodine,
          NutrientRules::coloursGetTheirCarotenoids,
          VarietyRules::brineShrimpAloneIsNoDiet,
          VarietyRules::predatorsGetWholePrey,
          VarietyRules::nobodyLivesOnOneFood,
          EatingRules::planktonPickersEatOften,
          EatingRules::everyoneEats,
          EatingRules::nobodyTurnsFromFoodForDays,
          EatingRules::nobodyKeepsAnObligateCoralEater);

  /** Everything that is wrong, heaviest first; nothing in a tank where all is well or nothing was logged yet. */
  public static List<Finding> findings(Case looked) {
    List<Finding> findings = new ArrayList<>();
    if (looked.begun() != null) {
      for (Rule rule : RULES) {
        findings.addAll(rule.look(looked));
      }
    }
    findings.sort(Finding::byWeight);
    return findings;
  }

  static List<Finding> grazersFindAlgaeEveryDay(Case looked) {
    return lacking(looked, "no-algae", Component.ALGAE);
  }

  static List<Finding> spongeGrazersGetSponge(Case looked) {
    return lacking(looked, "no-sponge", Component.SPONGE);
  }

  static List<Finding> crushersGetSomethingHard(Case looked) {
    return lacking(looked, "no-hard-food", Component.HARD_SHELLED);
  }

  static List<Finding> theWaterIsNotTooWarm(Case looked) {
    double alarm = looked.reference().constants().value(Constant.ALARM_C);
    if (!(looked.temperatureC() > alarm)) {
      return List.of();
    }
    DietRule rule = looked.reference().rule("hot-water");
    Step why =
        Step.of(
            "hotWater",
            "T > alarm",
            looked.temperatureC(),
            "°C",
            looked.reference().constants().source(Constant.ALARM_C),
            looked.reference().constants().input(Constant.ALARM_C));
    List<Step.Input> facts =
        List.of(Step.input("temperatureC", looked.temperatureC(), "°C"), Step.input("alarmC", alarm, "°C"));
    return List.of(new Finding(rule, List.of(), null, looked.today(), 0, List.of(), facts, List.of(why)));
  }

  /** Fish of the rule's guilds that have gone longer without a component than their guild, or their teeth, allow. */
  private static List<Finding> lacking(Case looked, String key, Component component) {
    DietRule rule = looked.reference().rule(key);
    List<FishDiet> concerned = new ArrayList<>();
    for (FishDiet diet : looked.review().diets()) {
      int gap = gapDays(diet.fish(), rule, component);
      if (gap > 0 && diet.fish().isHere() && looked.daysWithout(diet, component) > gap) {
        concerned.add(diet);
      }
    }
    return concerned.isEmpty() ? List.of() : List.of(lack(looked, rule, component, concerned));
  }

  private static Finding lack(Case looked, DietRule rule, Component component, List<FishDiet> concerned) {
    List<String> fish = new ArrayList<>();
    List<Step> why = new ArrayList<>();
    Day since = looked.today();
    int shortestGap = Integer.MAX_VALUE;
    double wantedKj = 0;
    for (FishDiet diet : concerned) {
      int gap = gapDays(diet.fish(), rule, component);
      Day last = looked.lastHad(diet, component);
      fish.add(diet.fish().key());
      since = last.isBefore(since) ? last : since;
      shortestGap = Math.min(shortestGap, gap);
      wantedKj = looked.dueToday(diet) * target(diet.fish(), component) + wantedKj;
      why.add(
          Step.of(
              "daysWithout:" + diet.fish().key(),
              "today − last day taken > longest gap",
              looked.today().since(last),
              "d",
              gapSource(diet.fish(), component),
              Step.input("gap", gap, "d"),
              Step.input("wantedShare", target(diet.fish(), component), "1"),
              Step.input("due", looked.dueToday(diet), "kJ/d")));
    }
    int days = looked.today().since(since);
    List<Step.Input> facts = List.of(Step.input("days", days, "d"), Step.input("gapDays", shortestGap, "d"));
    return new Finding(
        rule, fish, component, since, days, looked.offers(rule.offerFoods(), component, wantedKj), facts, why);
  }

  /** The longest time a fish may go without, 0 when the rule does not speak for it. */
  private static int gapDays(Fish fish, DietRule rule, Component component) {
    Species species = fish.species();
    if (component == Component.HARD_SHELLED && species != null && rule.speaksFor(fish.guild().key())) {
      return species.hardFoodGapDays();
    }
    Band band = fish.guild().band(component);
    return rule.speaksFor(fish.guild().key()) && band != null ? band.gapDays() : 0;
  }

  private static double target(Fish fish, Component component) {
    Band band = fish.guild().band(component);
    return band != null && band.hasTarget() ? band.targetShare() : 0;
  }

  private static String gapSource(Fish fish, Component component) {
    @Nullable Species species = fish.species();
    if (component == Component.HARD_SHELLED && species != null) {
      return species.hardFoodSource();
    }
    Band band = fish.guild().band(component);
    return band == null ? Step.PRACTICE : band.source();
  }
}
