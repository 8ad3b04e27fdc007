package provender.people;

/** Takes a letter to somebody's mailbox, where this server was told how. */
public interface Letters {

  /** What a letter is about: the address it came to, or a new password. */
  enum About {
    ADDRESS,
    PASSWORD
  }

  /** Whether this server sends letters at all. */
  boolean areSent();

  /**
   * Gives a letter to the mail server; throws when that does not take it.
   *
   * @param language such as {@code en}; another one where there is no text in it
   * @param name the keeper's, so that whoever has several knows which is meant
   * @param code for the link, once
   */
  void post(String address, About about, String language, String name, String code);
}
