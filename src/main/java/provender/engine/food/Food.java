package provender.engine.food;

import java.util.ArrayList;
import java.util.List;
import provender.engine.source.Constants;
import provender.engine.source.Figure;

/** A food as keepers give it, per 100 g as fed, with the parts of a diet it brings. */
public final class Food {
  private final String key;
  private final String category;
  private final Composition composition;
  private final double edibleFraction;
  private final double[] componentShares;
  private final Component[] brings;
  private final List<String> flags;
  private final String source;
  private final Figure energy;
  private final double kjPerGram;
  private final double dryPerGram;

  /** @param componentShares share of each {@link Component} by its place in the enum; flags stand as 1 */
  public Food(
      String key,
      String category,
      Composition composition,
      double edibleFraction,
      double[] componentShares,
      List<String> flags,
      String source,
      Constants constants) {
    this.key = key;
    this.category = category;
    this.composition = composition;
    this.edibleFraction = edibleFraction;
    this.componentShares = componentShares.clone();
    this.brings = bringing(this.componentShares);
    this.flags = new ArrayList<>(flags);
    this.source = source;
    this.energy = FoodEnergy.of(composition, isAlgae(), source, constants);
    this.kjPerGram = energy.value() * edibleFraction;
    this.dryPerGram = composition.dryFraction() * edibleFraction;
  }

  public String key() {
    return key;
  }

  public Composition composition() {
    return composition;
  }

  /** The part of the grams offered that can be eaten: shells and tests are weighed but not digested. */
  public double edibleFraction() {
    return edibleFraction;
  }

  /** Share of a component in this food's dry matter; 1 or 0 for a component that is a flag. */
  public double share(Component component) {
    return componentShares[component.ordinal()];
  }

  /** The components it brings at all, few of all there are; not to be changed. */
  public Component[] brings() {
    return brings;
  }

  private static Component[] bringing(double[] shares) {
    List<Component> found = new ArrayList<>();
    for (Component component : Component.values()) {
      if (shares[component.ordinal()] > 0) {
        found.add(component);
      }
    }
    return found.toArray(new Component[0]);
  }

  public boolean has(String flag) {
    return flags.contains(flag);
  }

  public String category() {
    return category;
  }

  public boolean isAlgae() {
    return category.equals("macroalgae");
  }

  /** Digestible energy in kJ per gram of what can be eaten, as fed. */
  public Figure energy() {
    return energy;
  }

  /** Digestible energy, in kJ, of one gram offered. */
  public double kjPerGram() {
    return kjPerGram;
  }

  /** Dry matter, in grams, of one gram offered. */
  public double dryPerGram() {
    return dryPerGram;
  }

  public String source() {
    return source;
  }
}
