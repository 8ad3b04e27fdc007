package provender.store;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.people.PeopleStore;
import provender.sync.DamagedJournal;
import provender.sync.JournalStore;
import provender.sync.Push;
import provender.sync.TankKey;

@QuarkusTest
class VerifiedTest {
  @Inject JournalStore journals;
  @Inject PeopleStore people;
  @Inject Verified verified;
  @Inject FirstChecksums first;
  @Inject EntityManager entities;
  @Inject RowFence fence;

  private final TankKey sick = new TankKey("home-" + UUID.randomUUID(), "sick");
  private final TankKey well = new TankKey(sick.household(), "well");

  @BeforeEach
  void furnish() {
    people.addHousehold(sick.household(), "Home");
    for (TankKey tank : List.of(sick, well)) {
      people.addTank(tank.household(), tank.tank(), tank.tank(), "Europe/Berlin");
      for (int i = 1; i <= 3; i++) {
        new Push(journals).take(tank, List.of(Phone.feeding(UUID.randomUUID().toString(), tank.tank(), UUID.randomUUID().toString(), i, "teo")),
            by -> true, Instant.now());
      }
    }
  }

  @AfterEach
  void heal() throws Exception {
    sql("delete from journal_entry where household_id = ?1");
    sql("update tank set head = 0, checksum = 0 where household_id = ?1");
    verified.check();
  }

  @Test
  void a_journal_that_no_longer_adds_up_is_not_served_and_the_others_are() throws Exception {
    sql("update journal_entry set written = replace(written, '3.5', '8.5') where household_id = ?1 and tank_id = 'sick' and seq = 2");
    verified.check();
    assertThatThrownBy(() -> journals.read(sick, 0, 500)).isInstanceOf(DamagedJournal.class);
    assertThatThrownBy(() -> journals.write(sick, writing -> 0)).isInstanceOf(DamagedJournal.class);
    assertThat(journals.read(well, 0, 500).entries()).hasSize(3);
    given().get("/q/health/ready").then().statusCode(503);
    given().get("/api/v1/upkeep").then().statusCode(200).body(org.hamcrest.Matchers.containsString("DAMAGED and not served: sick"));
  }

  @Test
  void an_entry_that_is_gone_is_missed_wherever_it_stood() throws Exception {
    sql("delete from journal_entry where household_id = ?1 and tank_id = 'sick' and seq = 3");
    verified.check();
    assertThat(verified.faults()).containsOnlyKeys(sick);
  }

  @Test
  void entries_from_before_there_were_checksums_are_given_theirs_and_then_add_up() throws Exception {
    sql("update journal_entry set checksum = null where household_id = ?1");
    sql("update tank set checksum = 0 where household_id = ?1");
    assertThat(first.giveSome()).isTrue();
    assertThat(first.giveSome()).isFalse();
    verified.check();
    assertThat(verified.faults()).isEmpty();
  }

  @Test
  void what_a_proxy_passes_on_is_no_longer_this_machine() {
    given().header("X-Forwarded-For", "203.0.113.9").get("/api/v1/upkeep").then().statusCode(401);
  }

  private void sql(String statement) {
    QuarkusTransaction.requiringNew().run(() -> {
      fence.enter(sick.household());
      entities.createNativeQuery(statement).setParameter(1, sick.household()).executeUpdate();
    });
  }
}
