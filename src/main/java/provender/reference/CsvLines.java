package provender.reference;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The lines of one file as raw text, cell by cell under the header's names. */
record CsvLines(List<String> header, Map<Integer, Map<String, String>> cellsByLine) {

  static CsvLines read(Table table, InputStream in, Faults faults) throws IOException {
    // A decoder of its own: the reader's default would turn broken UTF-8 into question marks in silence.
    var reader = new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder());
    var lines = new LinkedHashMap<Integer, Map<String, String>>();
    List<String> header = new ArrayList<>();
    int line = 1;
    try (var rows = new CsvMapper().readerFor(String[].class).with(CsvParser.Feature.WRAP_AS_ARRAY)
        .<String[]>readValues(reader)) {
      while (rows.hasNextValue()) {
        var cells = rows.nextValue();
        if (line == 1) header = List.of(cells);
        else if (cells.length != header.size())
          faults.add(table, line, "", "has " + cells.length + " cells where the header names " + header.size());
        else lines.put(line, named(header, cells));
        line += 1 + breaksIn(cells);
      }
    }
    return new CsvLines(header, lines);
  }

  private static Map<String, String> named(List<String> header, String[] cells) {
    var named = new LinkedHashMap<String, String>();
    for (int i = 0; i < cells.length; i++) named.put(header.get(i), cells[i].strip());
    return named;
  }

  private static int breaksIn(String[] cells) {
    int breaks = 0;
    for (var cell : cells) breaks += (int) cell.chars().filter(c -> c == '\n').count();
    return breaks;
  }
}
