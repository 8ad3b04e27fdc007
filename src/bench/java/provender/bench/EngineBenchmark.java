package provender.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import provender.contract.TankBook;
import provender.engine.node.MapNode;
import provender.engine.node.Node;
import provender.engine.reference.Reference;
import provender.reference.ReferenceFiles;

/**
 * The two heavy jobs of the engine: looking back over weeks of a busy tank, and reading ten years of it. Each is timed up to
 * the answer as its callers take it: JSON from a server, plain objects in a browser.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class EngineBenchmark {
  static final int REVIEW_DAYS = 28;
  static final int REVIEW_FEEDINGS = 12;
  static final int TEN_YEARS = 3652;
  static final int TEN_YEARS_FEEDINGS = 36;
  static final String NOW = BusyTank.LAST + "T21:00:00+01:00";

  private final Reference reference = Reference.of(new MapNode(ReferenceFiles.onClasspath().read()));
  private final ObjectMapper json = new ObjectMapper();
  private List<Node> tenYears = List.of();
  private TankBook weeks = new TankBook(reference);

  @Setup
  public void fill() {
    weeks = new TankBook(reference);
    weeks.take(nodes(BusyTank.entries(REVIEW_DAYS, REVIEW_FEEDINGS)));
    tenYears = nodes(BusyTank.entries(TEN_YEARS, TEN_YEARS_FEEDINGS));
  }

  @Benchmark
  public byte[] review_of_60_fish_over_28_days_of_12_feedings() throws IOException {
    return json.writeValueAsBytes(weeks.today(NOW));
  }

  /** The same without its JSON, to see what the engine alone takes; a browser has no such half. */
  @Benchmark
  public Map<String, Object> review_before_it_is_handed_over() {
    return weeks.today(NOW);
  }

  @Benchmark
  public byte[] fold_of_ten_years_and_today() throws IOException {
    TankBook book = new TankBook(reference);
    book.take(tenYears);
    return json.writeValueAsBytes(book.today(NOW));
  }

  private static List<Node> nodes(List<Map<String, Object>> entries) {
    return entries.stream().<Node>map(MapNode::new).toList();
  }
}
