package provender;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A server whose disk fills up in the middle of a push. */
class FullDiskIT {
  private static final long ROOM = 1L << 20;
  private static final int MOST_PUSHES = 400;

  @Test
  void nothing_answered_as_kept_is_lost_to_a_full_disk_and_what_was_not_goes_through_once_there_is_room() throws Exception {
    RunningServer server = RunningServer.fresh("full");
    try {
      server.kill();
      server = server.againWithRoomFor(Files.size(server.data().resolve("provender.mv.db")) + ROOM);
      Phone phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
      String tank = phone.tanks().get(0);
      String device = UUID.randomUUID().toString();
      List<String> kept = new ArrayList<>();
      List<JsonNode> unanswered = new ArrayList<>();
      for (int i = 1; i <= MOST_PUSHES && unanswered.size() < 5; i++) {
        ObjectNode entry = Phone.feeding(UUID.randomUUID().toString(), tank, device, i, phone.keeper());
        entry.withObject("/body").put("note", "x".repeat(20_000));
        int status = status(phone, tank, entry);
        if (status == 200) {
          kept.add(entry.path("id").asText());
        } else {
          assertThat(status).isGreaterThanOrEqualTo(500);
          unanswered.add(entry);
        }
      }
      assertThat(unanswered).as("the disk was full in between").isNotEmpty();
      server.kill();
      server = server.again();

      phone = Phone.signedIn(server.url(), "Bram", "demo-lantern-bram");
      for (JsonNode entry : unanswered) {
        assertThat(phone.push(tank, entry).path("answers").path(0).path("outcome").asText()).isIn("accepted", "duplicate");
        kept.add(entry.path("id").asText());
      }
      List<String> found = phone.pullAll(tank).stream().filter(entry -> entry.path("device").asText().equals(device))
          .map(entry -> entry.path("id").asText()).toList();
      System.out.println("disk full after " + (kept.size() - unanswered.size()) + " pushes answered as kept: all there, " + unanswered.size() + " sent again");
      assertThat(found).containsExactlyInAnyOrderElementsOf(kept);
    } finally {
      server.close();
    }
  }

  /** No answer at all counts like one that the server failed. */
  private static int status(Phone phone, String tank, JsonNode entry) throws Exception {
    ObjectNode batch = new ObjectMapper().createObjectNode();
    batch.putArray("entries").add(entry);
    try {
      HttpResponse<String> said = phone.post("/api/v1/tanks/" + tank + "/entries", batch.toString());
      return said.statusCode();
    } catch (IOException noAnswer) {
      return 599;
    }
  }
}
