package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

/** Kills in the middle of a push, so that it is not known what became of it, and right after answers to others. */
class KilledServerIT {
  private static final int ROUNDS = HowLong.times(10, 200);
  private static final int IN_A_BATCH = 100;
  private static final int LONGEST_MILLIS = 250;

  private final String device = UUID.randomUUID().toString();
  private final Random random = new Random();
  private final List<String> sent = new ArrayList<>();

  @Test
  void what_was_answered_as_kept_survives_every_kill_and_what_was_not_goes_through_afterwards_once() throws Exception {
    int cut = 0;
    RunningServer server = RunningServer.fresh("killed");
    try {
      for (int round = 1; round <= ROUNDS; round++) {
        Phone phone = phone(server);
        assertThat(outcomes(phone.push(tank(phone), entries(phone, 1)))).containsOnly("accepted");
        JsonNode[] batch = entries(phone, IN_A_BATCH);
        CompletableFuture<Boolean> answered = pushInTheBackground(phone, batch);
        Thread.sleep(random.nextInt(LONGEST_MILLIS));
        server.kill();
        server = server.again();
        Phone again = phone(server);
        // A batch is kept whole or not at all.
        Set<String> outcomes = outcomes(again.push(tank(again), batch));
        assertThat(outcomes).hasSize(1).isSubsetOf("accepted", "duplicate");
        if (answered.join()) {
          assertThat(outcomes).as("it was answered as kept").containsOnly("duplicate");
        } else {
          cut++;
        }
      }
      System.out.println(ROUNDS + " kills of the server, " + cut + " of them before the answer");
      assertThat(found(phone(server))).containsExactlyElementsOf(sent);
    } finally {
      server.close();
    }
  }

  private CompletableFuture<Boolean> pushInTheBackground(Phone phone, JsonNode... batch) throws Exception {
    String tank = tank(phone);
    return CompletableFuture.supplyAsync(() -> {
      try {
        return outcomes(phone.push(tank, batch)).equals(Set.of("accepted"));
      } catch (Exception killed) {
        return false;
      }
    });
  }

  private JsonNode[] entries(Phone phone, int count) throws Exception {
    String tank = tank(phone);
    JsonNode[] entries = new JsonNode[count];
    for (int i = 0; i < count; i++) {
      String id = UUID.randomUUID().toString();
      sent.add(id);
      entries[i] = Phone.feeding(id, tank, device, sent.size(), phone.keeper());
    }
    return entries;
  }

  private List<String> found(Phone phone) throws Exception {
    List<String> found = new ArrayList<>();
    for (JsonNode entry : phone.pullAll(tank(phone))) {
      if (entry.path("device").asText().equals(device)) {
        found.add(entry.path("id").asText());
      }
    }
    return found;
  }

  private static Set<String> outcomes(JsonNode answer) {
    Set<String> outcomes = new HashSet<>();
    answer.path("answers").forEach(one -> outcomes.add(one.path("outcome").asText()));
    return outcomes;
  }

  private static Phone phone(RunningServer server) throws Exception {
    return Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
  }

  private static String tank(Phone phone) throws Exception {
    return phone.tanks().get(0);
  }
}
