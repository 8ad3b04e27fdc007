package provender.sync;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;

/** The same worked sums as the phone's: src/test/js/checksum.test.js. */
class ChecksumTest {
  @Test
  void an_entry_adds_up_to_what_the_phone_says_it_does() throws Exception {
    for (JsonNode vector : new ObjectMapper().readTree(ChecksumTest.class.getResourceAsStream("/checksums.json"))) {
      JsonNode entry = vector.path("entry");
      assertThat(Checksum.of(entry, entry.path("seq").asLong())).as(entry.toString()).isEqualTo(vector.path("checksum").asLong());
    }
  }

  /** FNV-1a over words as described in the API, worked for {"seq": 1} step by step. */
  @Test
  void the_smallest_entry_is_worked_out_by_hand() {
    int prime = 0x01000193;
    int start = 0x811C9DC5;
    int key = (start ^ 'k') * prime;
    for (char unit : "seq".toCharArray()) {
      key = (key ^ unit) * prime;
    }
    int one = (((start ^ 'n') * prime ^ 0x3FF00000) * prime) * prime;
    int whole = ((start ^ 'o') * prime ^ ((key ^ one) * prime)) * prime;
    ObjectNode empty = new ObjectMapper().createObjectNode();
    assertThat(Checksum.of(empty, 1)).isEqualTo(Integer.toUnsignedLong(whole));
  }

  @Test
  void a_place_and_an_arrival_that_stand_in_the_text_do_not_count() {
    ObjectNode entry = new ObjectMapper().createObjectNode().put("id", "a");
    long sum = Checksum.of(entry, 5);
    assertThat(Checksum.of(entry.put("seq", 77).put("receivedAt", "now"), 5)).isEqualTo(sum);
    assertThat(Checksum.of(entry, 6)).isNotEqualTo(sum);
  }
}
