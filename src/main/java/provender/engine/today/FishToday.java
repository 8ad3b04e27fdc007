package provender.engine.today;

import provender.engine.diet.FishDiet;
import provender.engine.fish.Fish;
import provender.engine.fish.Weight;
import provender.engine.source.Figure;

/** One line of the roster as it stands today: mass of one fish, what the line is due, and its diet so far. */
public record FishToday(Fish fish, Weight weight, boolean stale, Figure dueKj, FishDiet diet) {}
