package provender.sync;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import provender.sync.Answer.Fault;

/**
 * Brings a journal in, line by line, in batches like a phone's. A batch is kept whole or not at all, and a run that was cut
 * short is simply made again: entries are known by their id. Whoever wrote an entry may have left the household since.
 */
public final class Import {
  private static final JsonMapper READER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();
  private static final int LONGEST_NAME = 64;

  private final Push push;
  private final TankKey tank;
  private final boolean adopt;
  private final Instant now;
  private final List<JsonNode> batch = new ArrayList<>();
  private final List<Long> numbers = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();
  private long line;
  private long accepted;
  private long duplicate;
  private long conflicted;

  /** @param adopt whether entries of another tank become this one's */
  public Import(JournalStore journals, TankKey tank, boolean adopt, Instant now) {
    this.push = new Push(journals);
    this.tank = tank;
    this.adopt = adopt;
    this.now = now;
  }

  /** A line that was not kept, counted from 1, and why. */
  public record Refused(long line, String id, List<Fault> faults) {}

  public record Result(long accepted, long duplicate, long conflicted, List<Refused> refused) {}

  public void line(String text) {
    line++;
    if (text.isBlank()) {
      return;
    }
    try {
      if (READER.readTree(text) instanceof ObjectNode entry) {
        batch.add(adopt ? entry.put("tank", tank.tank()) : entry);
        numbers.add(line);
      } else {
        refuse("a JSON object");
      }
    } catch (JsonProcessingException broken) {
      refuse("an entry in JSON (RFC 8259) on one line, each key once");
    }
    if (batch.size() == Push.MOST_ENTRIES) {
      send();
    }
  }

  public Result end() {
    send();
    return new Result(accepted, duplicate, conflicted, List.copyOf(refused));
  }

  private void refuse(String takes) {
    refused.add(new Refused(line, "", List.of(new Fault("line", takes))));
  }

  private void send() {
    if (batch.isEmpty()) {
      return;
    }
    List<Answer> answers = push.take(tank, batch, by -> !by.isEmpty() && by.length() <= LONGEST_NAME, now).answers();
    for (int i = 0; i < answers.size(); i++) {
      Answer answer = answers.get(i);
      switch (answer.outcome()) {
        case ACCEPTED -> accepted++;
        case DUPLICATE -> duplicate++;
        case CONFLICTED -> conflicted++;
        case REFUSED -> refused.add(new Refused(numbers.get(i), answer.id(), answer.faults()));
      }
    }
    batch.clear();
    numbers.clear();
  }
}
