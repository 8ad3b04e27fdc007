package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class BackupIT {
  @Test
  void a_backup_that_was_put_back_begins_a_new_epoch_and_takes_once_what_phones_send_again() throws Exception {
    RunningServer server = RunningServer.fresh("backup");
    try {
      Path copy = server.backup();
      Phone phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
      JsonNode before = tank(phone);
      String tank = before.path("id").asText();
      JsonNode late = Phone.feeding(UUID.randomUUID().toString(), tank, UUID.randomUUID().toString(), 1, phone.keeper());
      assertThat(outcome(phone, tank, late)).isEqualTo("accepted");

      server.kill();
      server.putBack(copy);
      server = server.again("-Dprovender.restored=true");

      phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
      JsonNode after = tank(phone);
      assertThat(after.path("epoch").asText()).isNotEqualTo(before.path("epoch").asText());
      assertThat(after.path("head").asLong()).isEqualTo(before.path("head").asLong());
      assertThat(outcome(phone, tank, late)).isEqualTo("accepted");
      assertThat(outcome(phone, tank, late)).isEqualTo("duplicate");

      List<String> lines = phone.get("/api/v1/tanks/" + tank + "/export.jsonl").body().lines().toList();
      assertThat(lines).hasSize((int) before.path("head").asLong() + 1);
      assertThat(outcome(phone, tank, withoutPlace(lines.get(0)))).isEqualTo("duplicate");
    } finally {
      server.close();
    }
  }

  private static JsonNode withoutPlace(String line) throws IOException {
    var entry = (com.fasterxml.jackson.databind.node.ObjectNode) new ObjectMapper().readTree(line);
    return entry.without(List.of("seq", "receivedAt"));
  }

  private static String outcome(Phone phone, String tank, JsonNode entry) throws Exception {
    return phone.push(tank, entry).path("answers").path(0).path("outcome").asText();
  }

  private static JsonNode tank(Phone phone) throws Exception {
    return new ObjectMapper().readTree(phone.get("/api/v1/tanks").body()).path("tanks").path(0);
  }
}
