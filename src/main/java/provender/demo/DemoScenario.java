package provender.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** The invented households with their tanks, keepers and journals, as they stand in {@code demo/}. */
public final class DemoScenario {
  static final ObjectMapper JSON = new ObjectMapper();

  private final List<DemoHousehold> households = new ArrayList<>();

  /** A household of the demo. */
  public record DemoHousehold(String id, String name, List<DemoTank> tanks, List<DemoKeeper> keepers) {}

  public record DemoTank(String id, String name, String zone, String journal) {}

  public record DemoKeeper(String id, String name, String role, String password) {}

  private DemoScenario() {}

  public static DemoScenario read() {
    DemoScenario scenario = new DemoScenario();
    try (InputStream index = open("index.json")) {
      for (JsonNode household : JSON.readTree(index).path("households")) {
        scenario.households.add(household(household));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return scenario;
  }

  public List<DemoHousehold> households() {
    return households;
  }

  /** A tank's journal as entries, none later than {@code start}, its day 0 being the day of {@code start} at the tank. */
  public List<JsonNode> entries(DemoTank tank, Instant start) {
    DemoClock clock = new DemoClock(start, ZoneId.of(tank.zone()));
    DemoLines lines = new DemoLines(tank, clock);
    List<JsonNode> entries = new ArrayList<>();
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(open(tank.journal()), StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        JsonNode written = JSON.readTree(line);
        if (written.has("kind")) {
          lines.entry(written).ifPresent(entries::add);
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return entries;
  }

  private static DemoHousehold household(JsonNode household) {
    List<DemoTank> tanks = new ArrayList<>();
    for (JsonNode tank : household.path("tanks")) {
      tanks.add(
          new DemoTank(
              tank.path("id").asText(),
              tank.path("name").asText(),
              tank.path("zone").asText(),
              tank.path("journal").asText()));
    }
    List<DemoKeeper> keepers = new ArrayList<>();
    for (JsonNode keeper : household.path("keepers")) {
      keepers.add(
          new DemoKeeper(
              keeper.path("id").asText(),
              keeper.path("name").asText(),
              keeper.path("role").asText(),
              keeper.path("password").asText()));
    }
    return new DemoHousehold(household.path("id").asText(), household.path("name").asText(), tanks, keepers);
  }

  private static InputStream open(String name) {
    InputStream stream = DemoScenario.class.getResourceAsStream("/demo/" + name);
    if (stream == null) {
      throw new IllegalStateException("demo/" + name + " is missing");
    }
    return stream;
  }
}
