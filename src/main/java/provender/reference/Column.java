package provender.reference;

import java.util.Set;

/**
 * What one column of a table takes.
 *
 * @param words the words a WORD, the names a SHARES and the words beside the keys a KEYS column may hold
 * @param from the table whose keys a KEYS column names, else empty
 * @param source the column that says where a NUMBER was read, else empty
 * @param standing the column that says how a NUMBER is known, else empty
 */
record Column(String name, Form form, boolean required, Set<String> words, String from, String source, String standing) {

  enum Form {
    /** Free text. */
    TEXT,
    /** A plain decimal number, zero or more, answering to a source and a standing. */
    NUMBER,
    /** One or several of a fixed set of words, joined by a bar. */
    WORD,
    /** One or several keys of a table, joined by a bar. */
    KEYS,
    /** Parts of a whole, {@code name:part}, joined by a bar. */
    SHARES
  }

  static Column text(String name, boolean required) {
    return new Column(name, Form.TEXT, required, Set.of(), "", "", "");
  }

  static Column number(String name, boolean required, String source, String standing) {
    return new Column(name, Form.NUMBER, required, Set.of(), "", source, standing);
  }

  static Column word(String name, boolean required, Set<String> words) {
    return new Column(name, Form.WORD, required, words, "", "", "");
  }

  static Column keys(String name, boolean required, String from, Set<String> words) {
    return new Column(name, Form.KEYS, required, words, from, "", "");
  }

  static Column shares(String name, Set<String> words, String source, String standing) {
    return new Column(name, Form.SHARES, true, words, "", source, standing);
  }
}
