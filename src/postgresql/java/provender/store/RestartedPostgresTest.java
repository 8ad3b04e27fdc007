package provender.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import provender.HowLong;
import provender.Phone;
import provender.people.PeopleStore;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Stored;
import provender.sync.Push;
import provender.sync.TankKey;

/** One of its processes is killed; PostgreSQL then ends all of them and starts again from its log. */
@QuarkusTest
class RestartedPostgresTest {
  private static final int RESTARTS = HowLong.times(3, 30);
  private static final int PUSHES_BETWEEN = 20;
  private static final int MOST_TRIES = 600;

  @Inject JournalStore journals;
  @Inject PeopleStore people;
  @Inject DataSource database;
  @Inject RowFence fence;

  private final TankKey tank = new TankKey("home-" + UUID.randomUUID(), "reef");

  @Test
  void what_was_kept_stays_and_what_was_not_goes_through_afterwards_once() throws Exception {
    people.addHousehold(tank.household(), "Home");
    people.addTank(tank.household(), tank.tank(), "Reef", "Europe/Berlin");
    String device = UUID.randomUUID().toString();
    List<String> sent = new ArrayList<>();
    int failures = 0;
    for (int restart = 1; restart <= RESTARTS; restart++) {
      CompletableFuture<Void> kill = CompletableFuture.runAsync(this::killOneProcess);
      for (int i = 0; i < PUSHES_BETWEEN; i++) {
        String id = UUID.randomUUID().toString();
        JsonNode entry = Phone.feeding(id, tank.tank(), device, sent.size() + 1, "teo");
        sent.add(id);
        failures += pushUntilKept(entry);
      }
      kill.get();
    }
    System.out.println(RESTARTS + " restarts of PostgreSQL: " + failures + " pushes failed and were made again, " + sent.size() + " kept once");
    assertThat(failures).as("the restarts were felt").isPositive();
    assertThat(journals.read(tank, 0, 10_000).entries()).extracting(Stored::id).containsExactlyElementsOf(sent);
    try (Connection connection = database.getConnection()) {
      connection.setAutoCommit(false);
      assertThat(new JournalCheck(connection, fence::enter).faults()).doesNotContainKey(tank);
      connection.rollback();
    }
  }

  private int pushUntilKept(JsonNode entry) throws InterruptedException {
    IllegalStateException gone = new IllegalStateException("PostgreSQL did not come back");
    for (int failures = 0; failures < MOST_TRIES; failures++) {
      try {
        new Push(journals).take(tank, List.of(entry), by -> true, Instant.now());
        return failures;
      } catch (RuntimeException restarting) {
        gone = new IllegalStateException("PostgreSQL did not come back", restarting);
        Thread.sleep(50);
      }
    }
    throw gone;
  }

  private void killOneProcess() {
    try (Connection connection = database.getConnection(); Statement statement = connection.createStatement();
        ResultSet pid = statement.executeQuery("select pg_backend_pid()")) {
      pid.next();
      ProcessHandle.of(pid.getLong(1)).orElseThrow().destroyForcibly();
    } catch (SQLException gone) {
      throw new IllegalStateException("its connection was gone before it could be killed", gone);
    }
  }
}
