package provender.web;

import static java.util.Map.entry;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The table of who may do what, and a body for each kind of it. {@link WhoMayWhatTest} sees to it that no endpoint is missing. */
final class Endpoints {
  private static final Map<String, String> BODIES =
      Map.ofEntries(
          entry("sign-in", "{\"name\":\"Teo\",\"password\":\"demo-lantern-teo\"}"),
          entry("entries", "{\"entries\":[]}"),
          entry("first-start", "{\"code\":\"guessed\",\"household\":\"Home\",\"name\":\"Someone\",\"password\":\"long enough to pass\"}"),
          entry("role", "{\"role\":\"keeper\"}"),
          entry("join", "{\"code\":\"guessed\",\"name\":\"Someone\",\"password\":\"long enough to pass\"}"),
          entry("tank", "{\"name\":\"Second tank\",\"zone\":\"Europe/Berlin\"}"),
          entry("weight", "{\"lengthCm\":20,\"a\":0.02,\"b\":3}"),
          entry("lines", "\n"),
          entry("jpeg", ""),
          entry("person", "{\"person\":\"{person}\"}"),
          entry("reset", "{\"code\":\"guessed\",\"password\":\"long enough to pass\"}"),
          entry("password", "{\"old\":\"not the old one\",\"password\":\"long enough to pass\"}"),
          entry("confirm", "{\"password\":\"not their password\"}"),
          entry("credential", "{\"name\":\"A phone\",\"credential\":{}}"),
          entry("mailbox", "{\"address\":\"someone@tank.example\",\"password\":\"not their password\"}"),
          entry("code", "{\"code\":\"guessed\"}"),
          entry("name", "{\"name\":\"Nobody of this name\"}"),
          entry("renamed", "{\"name\":\"A phone\"}"),
          entry("", ""));

  private Endpoints() {}

  /** A body that the endpoint of this row takes. */
  static String body(Map<String, String> row) {
    return Objects.requireNonNull(BODIES.get(Objects.requireNonNull(row.get("body"))));
  }

  static List<Map<String, String>> table() {
    InputStream stream = Objects.requireNonNull(Endpoints.class.getResourceAsStream("/who-may-what.csv"));
    List<String> lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines().toList();
    String[] columns = lines.get(0).split(",");
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      Map<String, String> row = new HashMap<>();
      for (int i = 0; i < columns.length; i++) {
        row.put(columns[i], cells[i]);
      }
      rows.add(row);
    }
    return rows;
  }
}
