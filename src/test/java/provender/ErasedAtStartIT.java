package provender;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** For a person who asks whoever runs the server. */
class ErasedAtStartIT {

  @Test
  void a_start_that_is_told_a_name_takes_it_out_and_leaves_the_journal_as_it_was() throws Exception {
    try (RunningServer server = RunningServer.fresh("erased")) {
      Phone teo = Phone.signedIn(server.url(), "Teo", "demo-lantern-teo");
      String tank = teo.tanks().get(0);
      int entries = teo.pullAll(tank).size();
      server.kill();
      try (RunningServer again = server.again("-Dprovender.erase=Teo")) {
        assertThat(teo.get("/api/v1/session").statusCode()).isEqualTo(401);
        assertThat(Phone.signedIn(again.url(), "Teo", "demo-lantern-teo").keeper()).isEmpty();
        Phone maren = Phone.signedIn(again.url(), "Maren", "demo-lantern-maren");
        assertThat(maren.pullAll(tank)).hasSize(entries);
        assertThat(maren.get("/api/v1/tanks").body()).doesNotContain("\"Teo\"").contains("Former keeper ");
      }
    }
  }
}
