package provender.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import provender.RunningServer;

/** Prints what the engine takes on this machine's JVM and in its Chromium, and the ratio of the two. */
public final class Benchmarks {
  private static final String MEASURE = """
      async ([entries, now, fold, repeats]) => {
        const { open } = await import("/engine/engine.js");
        const bench = open(await (await fetch("/shared/reference.json")).json());
        const kept = bench.tank();
        kept.take(entries);
        // As long as the JVM is warmed: the engine runs all day in a tab that is open.
        for (const warm = performance.now(); performance.now() - warm < 6000;) {
          const book = fold ? bench.tank() : kept;
          if (fold) book.take(entries);
          book.today(now);
        }
        const times = [];
        for (let i = 0; i < repeats; i++) {
          const start = performance.now();
          const book = fold ? bench.tank() : kept;
          if (fold) book.take(entries);
          book.today(now);
          times.push(performance.now() - start);
        }
        times.sort((a, b) => a - b);
        return times[Math.floor(times.length / 2)];
      }""";

  private static final String BEFORE = "review_before_it_is_handed_over";

  private Benchmarks() {}

  public static void main(String[] arguments) throws Exception {
    Collection<RunResult> results = new Runner(new OptionsBuilder().include(EngineBenchmark.class.getName()).build()).run();
    Map<String, Double> jvm = new TreeMap<>();
    results.forEach(one -> jvm.put(one.getParams().getBenchmark().replaceAll(".*\\.", ""), one.getPrimaryResult().getScore()));
    Map<String, Double> chromium = new TreeMap<>();
    try (RunningServer server = RunningServer.fresh("bench", RunningServer.FULLY_COMPILED); Playwright playwright = Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser = playwright.chromium().launch(new BrowserType.LaunchOptions()
            .setExecutablePath(Path.of(System.getenv().getOrDefault("CHROMIUM", "/usr/bin/chromium"))).setArgs(List.of("--no-sandbox")))) {
      Page page = browser.newPage();
      page.navigate(server.url() + "/manifest.webmanifest");
      chromium.put("review_of_60_fish_over_28_days_of_12_feedings",
          measure(page, EngineBenchmark.REVIEW_DAYS, EngineBenchmark.REVIEW_FEEDINGS, false, 60));
      chromium.put("fold_of_ten_years_and_today",
          measure(page, EngineBenchmark.TEN_YEARS, EngineBenchmark.TEN_YEARS_FEEDINGS, true, 7));
    }
    System.out.println();
    chromium.forEach((name, millis) -> System.out.printf("%-48s JVM %8.2f ms   Chromium %8.2f ms   ratio %.2f%n",
        name, jvm.get(name), millis, millis / jvm.get(name)));
    System.out.printf("%-48s JVM %8.2f ms%n", BEFORE, jvm.get(BEFORE));
  }

  private static double measure(Page page, int days, int feedings, boolean fold, int repeats) throws Exception {
    Object entries = new ObjectMapper().readValue(new ObjectMapper().writeValueAsString(BusyTank.entries(days, feedings)), Object.class);
    page.evaluate("entries => { window.entries = JSON.parse(entries); }", new ObjectMapper().writeValueAsString(entries));
    return ((Number) page.evaluate("(arguments) => (" + MEASURE + ")([window.entries, ...arguments])",
        List.of(EngineBenchmark.NOW, fold, repeats))).doubleValue();
  }
}
