package provender.web;

/** Reads what stands in an address. */
final class Parameter {
  private Parameter() {}

  static long whole(String field, String text, long least, long most) {
    try {
      long number = Long.parseLong(text);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException notANumber) {
      // Refused below, like a number out of bounds.
    }
    throw Problem.badRequest("a field cannot be used", field, "a whole number from " + least + " to " + most);
  }
}
