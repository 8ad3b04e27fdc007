package provender.photo;

/** What was sent cannot be kept as a picture; the message says what would be taken. */
public final class NotAPicture extends Exception {
  NotAPicture(String takes) {
    super(takes);
  }
}
