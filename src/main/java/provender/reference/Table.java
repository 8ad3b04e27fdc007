package provender.reference;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The declaration of one table: its file, its key and what each column takes. */
final class Table {
  static final Set<String> STANDINGS = Set.of("seen", "memory", "practice");

  private final String name;
  private final String file;
  private final List<String> key;
  private final Map<String, Column> columns = new LinkedHashMap<>();
  private String source = "";
  private String standing = "";

  private Table(String name, String file, List<String> key) {
    this.name = name;
    this.file = file;
    this.key = key;
  }

  static Table of(String name, String file, String... key) {
    return new Table(name, file, List.of(key));
  }

  String name() {
    return name;
  }

  String file() {
    return file;
  }

  List<String> key() {
    return key;
  }

  Collection<Column> columns() {
    return columns.values();
  }

  Table text(String... names) {
    for (var column : names) put(Column.text(column, true));
    return this;
  }

  Table note(String... names) {
    for (var column : names) put(Column.text(column, false));
    return this;
  }

  Table word(String column, String... words) {
    return put(Column.word(column, true, Set.of(words)));
  }

  Table wordOrNone(String column, String... words) {
    return put(Column.word(column, false, Set.of(words)));
  }

  Table standing(String column) {
    return put(Column.word(column, true, STANDINGS));
  }

  Table keys(String column, String from) {
    return put(Column.keys(column, true, from, Set.of()));
  }

  Table keysOrNone(String column, String from, String... words) {
    return put(Column.keys(column, false, from, Set.of(words)));
  }

  /** The numbers declared from here on answer to these two columns. */
  Table answeringTo(String source, String standing) {
    this.source = source;
    this.standing = standing;
    put(Column.keys(source, false, Tables.SOURCES_NAME, Set.of()));
    return put(Column.word(standing, false, STANDINGS));
  }

  Table number(String... names) {
    for (var column : names) put(Column.number(column, true, source, standing));
    return this;
  }

  Table numberOrNone(String... names) {
    for (var column : names) put(Column.number(column, false, source, standing));
    return this;
  }

  Table shares(String column, String... words) {
    return put(Column.shares(column, Set.of(words), source, standing));
  }

  private Table put(Column column) {
    columns.putIfAbsent(column.name(), column);
    return this;
  }
}
