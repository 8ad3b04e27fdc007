package provender.contract;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import provender.engine.node.Node;

/** The fields of one request, read one by one; every bad one is remembered by name, and so is every unknown one. */
final class Question {
  /** The longest list a calculation takes. */
  static final int LONGEST_LIST = 10_000;

  private final Node node;
  private final String prefix;
  private final List<Fault> faults;
  private final List<String> known = new ArrayList<>();

  Question(Node node) {
    this(node, "", new ArrayList<>());
  }

  private Question(Node node, String prefix, List<Fault> faults) {
    this.node = node;
    this.prefix = prefix;
    this.faults = faults;
  }

  boolean has(String name) {
    known.add(name);
    return node.at(name) != null;
  }

  /** A number within bounds; NaN, remembered as a fault, when it is missing or outside. */
  double number(String name, double least, double most) {
    known.add(name);
    Object value = node.at(name);
    if (value instanceof Double number && number >= least && number <= most) {
      return number;
    }
    return refuse(name, takes(least, most));
  }

  /** A number above zero. */
  double positive(String name, double most) {
    known.add(name);
    Object value = node.at(name);
    if (value instanceof Double number && number > 0 && number <= most) {
      return number;
    }
    return refuse(name, "a number above 0 and at most " + whole(most));
  }

  double numberOr(String name, double least, double most, double otherwise) {
    return has(name) ? number(name, least, most) : otherwise;
  }

  /** A whole number within bounds. */
  double wholeOr(String name, double least, double most, double otherwise) {
    double number = numberOr(name, least, most, otherwise);
    return number == Math.floor(number) || Double.isNaN(number) ? number : refuse(name, "a whole number");
  }

  /** A list of at least so many numbers within bounds; empty, with every bad one named, when it cannot be used. */
  double[] numbers(String name, int fewest, double least, double most) {
    known.add(name);
    if (!(node.at(name) instanceof List<?> list) || list.size() < fewest || list.size() > LONGEST_LIST) {
      refuse(name, "a list of " + fewest + " to 10000 numbers");
      return new double[0];
    }
    double[] numbers = new double[list.size()];
    for (int i = 0; i < numbers.length; i++) {
      if (list.get(i) instanceof Double number && number >= least && number <= most) {
        numbers[i] = number;
      } else {
        refuse(name + "[" + i + "]", least == Double.MIN_VALUE ? "a number above 0 and at most " + whole(most) : takes(least, most));
      }
    }
    return numbers;
  }

  String text(String name) {
    known.add(name);
    if (node.at(name) instanceof String text && !text.isEmpty() && text.length() <= 200) {
      return text;
    }
    refuse(name, "a text of 1 to 200 characters");
    return "";
  }

  /** True or false; false when absent. */
  boolean flag(String name) {
    Object value = node.at(name);
    if (has(name) && !(value instanceof Boolean)) {
      refuse(name, "true or false");
    }
    return Boolean.TRUE.equals(value);
  }

  /** The texts of a list that may be absent. */
  List<String> textsOr(String name) {
    List<String> texts = has(name) ? node.texts(name) : List.of();
    if (has(name) && (!(node.at(name) instanceof List<?> list) || list.size() != texts.size() || list.size() > LONGEST_LIST)) {
      refuse(name, "a list of at most 10000 texts");
    }
    return texts;
  }

  String textOr(String name, String otherwise) {
    return has(name) ? text(name) : otherwise;
  }

  /** An object inside this one, or null when it is absent. */
  @Nullable Question inner(String name) {
    if (!has(name)) {
      return null;
    }
    Node inner = node.node(name);
    if (inner == null) {
      refuse(name, "an object");
      return null;
    }
    return new Question(inner, prefix + name + ".", faults);
  }

  /** The objects of a list that must hold at least one. */
  List<Question> list(String name) {
    known.add(name);
    List<Question> items = new ArrayList<>();
    if (!(node.at(name) instanceof List<?> list) || list.isEmpty() || list.size() > LONGEST_LIST) {
      refuse(name, "a list of 1 to 10000 objects");
      return items;
    }
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i) instanceof Node item) {
        items.add(new Question(item, prefix + name + "[" + i + "].", faults));
      } else {
        refuse(name + "[" + i + "]", "an object");
      }
    }
    return items;
  }

  double refuse(String name, String takes) {
    faults.add(new Fault(prefix + name, takes));
    return Double.NaN;
  }

  /** After the last field was read: whatever else stands in the object is refused by name. */
  void nothingElse() {
    for (String name : node.names()) {
      if (!known.contains(name)) {
        refuse(name, "nothing: this field is not known here");
      }
    }
  }

  boolean isFaulty() {
    return !faults.isEmpty();
  }

  List<Fault> faults() {
    return faults;
  }

  private static String takes(double least, double most) {
    return "a number from " + whole(least) + " to " + whole(most);
  }

  /** Bounds are whole numbers or tenths, written without a number formatter. */
  private static String whole(double bound) {
    int tenths = (int) (Math.abs(bound) * 10 + 0.5);
    String sign = bound < 0 ? "-" : "";
    return tenths % 10 == 0 ? sign + tenths / 10 : sign + tenths / 10 + "." + tenths % 10;
  }
}
