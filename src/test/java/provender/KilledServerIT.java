package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class KilledServerIT {
  private static final int ROUNDS = HowLong.times(20, 200);

  @Test
  void what_was_answered_as_kept_survives_every_kill_exactly_once() throws Exception {
    List<String> kept = new ArrayList<>();
    String device = UUID.randomUUID().toString();
    RunningServer server = RunningServer.fresh("killed");
    try {
      for (int round = 1; round <= ROUNDS; round++) {
        Phone phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
        String id = UUID.randomUUID().toString();
        JsonNode answer = phone.push(tank(phone), Phone.feeding(id, tank(phone), device, round, phone.keeper()));
        assertThat(answer.path("answers").path(0).path("outcome").asText()).isEqualTo("accepted");
        kept.add(id);
        server.kill();
        server = server.again();
      }
      Phone phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
      List<String> found = new ArrayList<>();
      for (JsonNode entry : phone.pullAll(tank(phone))) {
        if (entry.path("device").asText().equals(device)) {
          found.add(entry.path("id").asText());
        }
      }
      assertThat(found).containsExactlyElementsOf(kept);
    } finally {
      server.close();
    }
  }

  private static String tank(Phone phone) throws Exception {
    return phone.tanks().get(0);
  }
}
