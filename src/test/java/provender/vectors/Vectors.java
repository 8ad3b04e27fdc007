package provender.vectors;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The cases in {@code shared/vectors}, and how an answer is held against one. */
public final class Vectors {
  private static final double RELATIVE = 1e-9;
  private static final ObjectMapper JSON = new ObjectMapper();

  /** A case: what is asked, and the part of the answer that is known. */
  public record Vector(String name, String source, String call, Map<String, Object> input, Map<String, Object> expect) {}

  private Vectors() {}

  public static List<Vector> all() {
    List<Vector> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("shared/vectors"))) {
      for (Path file : files.sorted().toList()) {
        all.addAll(JSON.readValue(file.toFile(), new TypeReference<List<Vector>>() {}));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return all;
  }

  /** Where an answer differs from what is expected; fields that are not expected may hold anything. */
  public static List<String> differences(Object expect, Object actual) {
    List<String> differences = new ArrayList<>();
    compare("", expect, actual, differences);
    return differences;
  }

  private static void compare(String at, Object expect, Object actual, List<String> differences) {
    if (expect instanceof Map<?, ?> wanted && actual instanceof Map<?, ?> given) {
      wanted.forEach((name, value) -> compare(at + "." + name, value, given.get(name), differences));
    } else if (expect instanceof List<?> wanted && actual instanceof List<?> given && wanted.size() == given.size()) {
      for (int i = 0; i < wanted.size(); i++) {
        compare(at + "[" + i + "]", wanted.get(i), given.get(i), differences);
      }
    } else if (expect instanceof Number wanted && actual instanceof Number given) {
      double scale = Math.max(Math.abs(wanted.doubleValue()), Math.abs(given.doubleValue()));
      if (!(Math.abs(wanted.doubleValue() - given.doubleValue()) <= RELATIVE * scale)) {
        differences.add(at + " is " + given + ", expected " + wanted);
      }
    } else if (!expect.equals(actual)) {
      differences.add(at + " is " + actual + ", expected " + expect);
    }
  }
}
