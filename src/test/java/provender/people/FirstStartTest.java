package provender.people;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

@QuarkusTest
@TestProfile(FirstStartTest.Empty.class)
class FirstStartTest {
  private static final String PASSWORD = "a lamp in the pump room";

  /** A server of its own that nobody has set up yet. */
  public static class Empty implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("provender.demo", "false", "quarkus.datasource.jdbc.url",
          "jdbc:h2:mem:empty;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1");
    }
  }

  @Inject PeopleStore people;
  @Inject MemberStore members;
  @Inject SessionStore phones;

  @Test
  void the_code_on_the_console_makes_the_first_steward_once() {
    Instant now = Instant.now();
    FirstStart start = new FirstStart(people, new Households(people, members));
    assertThat(start.isOpen()).isTrue();
    assertThat(start.found("guessed", "Home", "Ada", PASSWORD, now).keeper()).isNull();
    assertThat(start.found(start.code(), "Home", "Ada", "short", now).faults()).extracting(Households.Fault::field).containsExactly("password");
    assertThat(start.found(start.code(), " ", "", "short", now).faults()).extracting(Households.Fault::field)
        .containsExactlyInAnyOrder("household", "name", "password");

    Keeper steward = Objects.requireNonNull(start.found(start.code(), "Home", "Ada", PASSWORD, now).keeper());
    assertThat(people.memberships(steward.id())).singleElement().satisfies(one -> {
      assertThat(one.name()).isEqualTo("Home");
      assertThat(one.role()).isEqualTo(Role.STEWARD);
    });
    assertThat(new Sessions(people, phones, members).signIn("Ada", PASSWORD, "here", "a phone", now)).isInstanceOf(Sessions.SignIn.SignedIn.class);

    Sessions sessions = new Sessions(people, phones, members);
    String token = sessions.open(steward, "a phone", now);
    assertThat(sessions.keeper(token, now.plus(Sessions.UNUSED).minusSeconds(1))).isEqualTo(steward);
    assertThat(sessions.keeper(token, now.plus(Sessions.UNUSED).plus(Sessions.UNUSED).plusSeconds(1))).isNull();
    String used = sessions.open(steward, "a phone", now);
    for (int month = 1; month < 6; month++) {
      assertThat(sessions.keeper(used, now.plus(Duration.ofDays(30L * month - 1)))).isEqualTo(steward);
    }
    assertThat(sessions.keeper(used, now.plus(Sessions.LASTS).plusSeconds(1))).isNull();

    String forgot = Objects.requireNonNull(new Resets(people, members, phones).make("Ada", now));
    assertThat(sessions.devices(steward, token, now)).isEmpty();
    assertThat(new Resets(people, members, phones).follow(forgot, "kelp forests at low tide", now).keeper()).isEqualTo(steward);
    assertThat(new Resets(people, members, phones).make("Nobody", now)).isNull();

    assertThat(start.isOpen()).isFalse();
    assertThat(start.found(start.code(), "Second home", "Eve", PASSWORD, now).faults()).extracting(Households.Fault::field).containsExactly("code");

    Households households = new Households(people, members);
    String household = people.memberships(steward.id()).get(0).household();
    String late = households.invite(household, steward, Role.KEEPER, Instant.now().minus(Households.INVITATION_LASTS).minusSeconds(1));
    assertThat(households.join(late, "Too late", PASSWORD, Instant.now()).keeper()).isNull();
  }
}
