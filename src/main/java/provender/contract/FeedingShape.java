package provender.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import provender.engine.intake.Helping;
import provender.engine.journal.Feeding;
import provender.engine.today.FeedingToday;

/** Feedings with their estimated shares, as JSON. */
final class FeedingShape {
  private FeedingShape() {}

  static List<Object> all(List<FeedingToday> feedings) {
    List<Object> list = new ArrayList<>();
    for (FeedingToday feeding : feedings) {
      list.add(of(feeding));
    }
    return list;
  }

  private static Map<String, Object> of(FeedingToday today) {
    Feeding feeding = today.feeding();
    double grams = 0;
    double kj = 0;
    for (Helping helping : feeding.meal().helpings()) {
      grams += helping.grams();
      kj += FeedingToday.kj(helping).value();
    }
    return Shapes.object(
        "id", feeding.id(),
        "day", (double) feeding.at().day().epochDay(),
        "minute", (double) feeding.at().minute(),
        "by", feeding.by(),
        "source", feeding.fromFeeder() ? "feeder" : "hand",
        "items", items(feeding),
        "grams", grams,
        "kj", kj,
        "leftoverGrams", feeding.meal().leftoverGrams(),
        "refusedBy", feeding.meal().refusedBy(),
        "note", feeding.note(),
        "corrected", feeding.corrected(),
        "sent", feeding.sent());
  }

  static List<Object> items(Feeding feeding) {
    List<Object> items = new ArrayList<>();
    for (Helping helping : feeding.meal().helpings()) {
      items.add(
          Shapes.object(
              "food", helping.foodKey(),
              "grams", helping.grams(),
              "kj", FeedingToday.kj(helping).value(),
              "measure", helping.measure(),
              "count", helping.count(),
              "supplements", helping.supplements(),
              "fish", helping.fish()));
    }
    return items;
  }

  /** Who is reckoned to have got how much of one feeding; nothing for one that is not among those of the last days. */
  static List<Object> shares(List<FeedingToday> feedings, String id) {
    List<Object> list = new ArrayList<>();
    for (FeedingToday feeding : feedings) {
      if (feeding.feeding().id().equals(id)) {
        add(feeding.shares(), list);
      }
    }
    return list;
  }

  private static void add(List<FeedingToday.Share> shares, List<Object> list) {
    for (FeedingToday.Share share : shares) {
      list.add(Shapes.object("fish", share.fish().key(), "grams", share.grams(), "kj", share.kj()));
    }
  }
}
