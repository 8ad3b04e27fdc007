package provender.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** One household's keeper asks for another's things by every id they could come upon; -Dfuzz.requests and -Dfuzz.seed change how many and which. */
@QuarkusTest
class ForeignIdsTest {
  private static final int REQUESTS = Integer.getInteger("fuzz.requests", 400);
  private static final List<String> THEIRS = List.of("quernhaven", "quernhaven-hall", "kettlewharf", "kettlewharf-tank", "kettlewharf-tub", "maren", "teo", "harbour-desk");
  private static final List<String> OURS = List.of("tannelwick", "tannelwick-market", "bram", "sunniva");
  private static final List<String> SPOILERS = List.of("", "%20", "%00", "%25", "/", "/..", "%2f..%2f", ";x=1", "'--", "%27%20or%201=1", ".json", "%0d%0a", "*");
  private static final List<String> WORDS_OF_OTHERS =
      List.of("Quernhaven", "Entrance hall", "Maren", "Teo", "Ilka", "Kettle Wharf", "Wharf window", "Wenna");
  private static final List<String> PATHS = List.of(
      "GET /api/v1/tanks/{id}/entries", "GET /api/v1/tanks/{id}/entries?after=0&limit=5&household={id}", "GET /api/v1/tanks/{id}/export.jsonl",
      "GET /api/v1/tanks/{id}/export.csv", "GET /api/v1/tanks/{id}/checksums", "GET /api/v1/households/{id}/people",
      "DELETE /api/v1/households/{id}/people/{id}", "DELETE /api/v1/households/tannelwick/people/{id}", "DELETE /api/v1/households/{id}/invitations/{id}",
      "POST /api/v1/households/{id}/people/{id}/reset", "DELETE /api/v1/session/devices/{id}");

  private static final Pattern OWN = Pattern.compile("^/api/v1/(tanks/tannelwick-market|households/tannelwick)(?=[/;?#]|$)");

  @Test
  void no_id_of_another_household_opens_anything_or_gives_a_word_away() {
    long seed = Long.getLong("fuzz.seed", System.nanoTime());
    Random random = new Random(seed);
    List<String> wrong = new ArrayList<>();
    for (int i = 0; i < REQUESTS; i++) {
      String[] asked = one(PATHS, random).split(" ", 2);
      String path = asked[1];
      while (path.contains("{id}")) {
        String id = random.nextInt(4) == 0 ? one(OURS, random) : spoilt(one(THEIRS, random), random);
        path = path.replaceFirst("\\{id}", id.replace("$", ""));
      }
      if (asked[0].equals("DELETE") && path.contains("bram")) {
        continue; // would be leaving
      }
      if (path.contains("/devices/") && path.endsWith("/..")) {
        continue; // would be signing out one's own phones
      }
      Response answer = People.OTHER_KEEPER.asks().urlEncodingEnabled(false).redirects().follow(false).request(asked[0], path);
      String said = answer.asString();
      boolean leaks = WORDS_OF_OTHERS.stream().anyMatch(said::contains);
      boolean refused = answer.statusCode() >= 400 && answer.statusCode() < 500;
      if (leaks || !(refused || (answer.statusCode() == 200 && OWN.matcher(path).find()))) {
        wrong.add(asked[0] + " " + path + " -> " + answer.statusCode() + " " + said);
      }
    }
    assertThat(wrong).as("seed " + seed).isEmpty();
  }

  private static String spoilt(String id, Random random) {
    String spoiler = one(SPOILERS, random);
    return switch (random.nextInt(5)) {
      case 0 -> id;
      case 1 -> id + spoiler;
      case 2 -> "tannelwick-market" + spoiler + id;
      case 3 -> id.toUpperCase(java.util.Locale.ROOT);
      default -> id.substring(0, 1 + random.nextInt(id.length()));
    };
  }

  private static String one(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }
}
