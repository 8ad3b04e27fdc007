package provender.people;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
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

  @Test
  void the_code_on_the_console_makes_the_first_steward_once() {
    FirstStart start = new FirstStart(people);
    assertThat(start.isOpen()).isTrue();
    assertThat(start.found("guessed", "Home", "Ada", PASSWORD).keeper()).isNull();
    assertThat(start.found(start.code(), "Home", "Ada", "short").faults()).extracting(Households.Fault::field).containsExactly("password");
    assertThat(start.found(start.code(), " ", "", "short").faults()).extracting(Households.Fault::field)
        .containsExactlyInAnyOrder("household", "name", "password");

    Keeper steward = Objects.requireNonNull(start.found(start.code(), "Home", "Ada", PASSWORD).keeper());
    assertThat(people.memberships(steward.id())).singleElement().satisfies(one -> {
      assertThat(one.name()).isEqualTo("Home");
      assertThat(one.role()).isEqualTo(Role.STEWARD);
    });
    assertThat(new Sessions(people).signIn("Ada", PASSWORD, "here", Instant.now())).isInstanceOf(Sessions.SignIn.SignedIn.class);

    assertThat(start.isOpen()).isFalse();
    assertThat(start.found(start.code(), "Second home", "Eve", PASSWORD).faults()).extracting(Households.Fault::field).containsExactly("code");

    Households households = new Households(people);
    String household = people.memberships(steward.id()).get(0).household();
    String late = households.invite(household, Role.KEEPER, Instant.now().minus(Households.INVITATION_LASTS).minusSeconds(1));
    assertThat(households.join(late, "Too late", PASSWORD, Instant.now()).keeper()).isNull();
  }
}
