package provender.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Our own tables copied to a folder, where a test breaks them one place at a time. */
final class BrokenCopy {
  static final Path OURS = Path.of("shared/reference");

  private final Path folder;

  private BrokenCopy(Path folder) {
    this.folder = folder;
  }

  static BrokenCopy in(Path folder) throws IOException {
    for (var table : Tables.ALL) Files.copy(OURS.resolve(table.file()), folder.resolve(table.file()));
    return new BrokenCopy(folder);
  }

  /** The line of the file that begins with this text. */
  int lineOf(String file, String beginning) throws IOException {
    var lines = lines(file);
    for (int i = 0; i < lines.size(); i++) if (lines.get(i).startsWith(beginning)) return i + 1;
    throw new AssertionError(file + " has no line beginning with " + beginning);
  }

  /** Changes a text that stands in the line beginning so. */
  BrokenCopy change(String file, String beginning, String from, String to) throws IOException {
    return change(file, beginning, line -> {
      assertThat(line).contains(from);
      return line.replace(from, to);
    });
  }

  BrokenCopy change(String file, String beginning, UnaryOperator<String> change) throws IOException {
    var lines = new ArrayList<>(lines(file));
    lines.replaceAll(line -> line.startsWith(beginning) ? change.apply(line) : line);
    Files.write(folder.resolve(file), lines);
    return this;
  }

  /** Empties or fills one cell. For lines without quoted commas before that column. */
  BrokenCopy set(String file, String beginning, String column, String to) throws IOException {
    int at = List.of(lines(file).get(0).split(",", -1)).indexOf(column);
    return change(file, beginning, line -> {
      var cells = line.split(",", -1);
      cells[at] = to;
      return String.join(",", cells);
    });
  }

  BrokenCopy append(String file, String line) throws IOException {
    var lines = new ArrayList<>(lines(file));
    lines.add(line);
    Files.write(folder.resolve(file), lines);
    return this;
  }

  BrokenCopy remove(String file) throws IOException {
    Files.delete(folder.resolve(file));
    return this;
  }

  List<Fault> faults() {
    var refused = catchThrowableOfType(ReferenceRefused.class, () -> ReferenceFiles.in(folder).read());
    assertThat(refused).as("the broken copy is refused").isNotNull();
    return refused.faults();
  }

  List<String> lines(String file) throws IOException {
    return Files.readAllLines(folder.resolve(file));
  }
}
