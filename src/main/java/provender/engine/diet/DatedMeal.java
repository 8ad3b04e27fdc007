package provender.engine.diet;

import provender.engine.intake.Meal;
import provender.engine.quantity.Day;

/** A meal with the day it was given on. */
public record DatedMeal(Day day, Meal meal) {}
