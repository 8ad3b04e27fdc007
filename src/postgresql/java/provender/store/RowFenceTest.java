package provender.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provender.Phone;
import provender.people.Keeper;
import provender.people.MemberStore;
import provender.people.MemberStore.Change;
import provender.people.MemberStore.What;
import provender.people.PeopleStore;
import provender.people.PeopleStore.Account;
import provender.people.PersonStore;
import provender.people.PersonStore.ChangeIn;
import provender.people.Role;
import provender.photo.PhotoStore;
import provender.sync.JournalStore;
import provender.sync.JournalStoreContract;
import provender.sync.Push;
import provender.sync.TankKey;

/** All that a journal store must do, on PostgreSQL, and what its rows keep to themselves whatever is asked. */
@QuarkusTest
class RowFenceTest extends JournalStoreContract {
  @Inject JournalStore store;
  @Inject PeopleStore people;
  @Inject MemberStore members;
  @Inject PersonStore persons;
  @Inject PhotoStore photos;
  @Inject Verified verified;
  @Inject RowFence fence;
  @Inject EntityManager entities;
  @Inject DataSource database;

  private final TankKey ours = new TankKey("home-" + UUID.randomUUID(), "reef");
  private final TankKey theirs = new TankKey("house-" + UUID.randomUUID(), "reef");

  @BeforeEach
  void furnish() {
    for (TankKey tank : List.of(ours, theirs)) {
      people.addHousehold(tank.household(), "Home");
      people.addTank(tank.household(), tank.tank(), "Reef", "Europe/Berlin");
    }
  }

  @Override
  protected JournalStore store() {
    return store;
  }

  @Override
  protected TankKey tank() {
    return ours;
  }

  @Test
  void a_statement_that_forgets_the_household_finds_the_own_one_only() {
    feed(ours, 2);
    feed(theirs, 3);
    assertThat(countAs(ours.household())).isEqualTo(2);
    assertThat(countAs(theirs.household())).isEqualTo(3);
  }

  @Test
  void who_named_no_household_finds_nothing_not_even_after_another_did_on_the_same_connection() throws SQLException {
    feed(ours, 2);
    assertThat(countAs(ours.household())).isEqualTo(2);
    for (int i = 0; i < 50; i++) {
      try (Connection connection = database.getConnection();
          ResultSet count = connection.createStatement().executeQuery("select count(*) from journal_entry")) {
        assertThat(count.next()).isTrue();
        assertThat(count.getLong(1)).isZero();
      }
    }
  }

  @Test
  void nothing_is_written_into_or_taken_out_of_another_household() {
    feed(ours, 1);
    feed(theirs, 1);
    assertThat(changedAs(ours, "delete from journal_entry where household_id = ?1", theirs.household())).isZero();
    assertThat(changedAs(ours, "update journal_entry set kind = 'other' where household_id = ?1", theirs.household())).isZero();
    assertThatThrownBy(() -> changedAs(ours, "update journal_entry set household_id = ?1", theirs.household()))
        .hasStackTraceContaining("row-level security");
    assertThat(countAs(theirs.household())).isEqualTo(1);
  }

  @Test
  void pictures_and_changes_among_people_are_fenced_in_alike() throws SQLException {
    Keeper keeper = new Keeper("keeper-" + UUID.randomUUID(), "Keeper " + UUID.randomUUID());
    people.addKeeper(ours.household(), new Account(keeper, "no password"), Role.KEEPER);
    people.addMember(theirs.household(), keeper.id(), Role.KEEPER);
    for (TankKey tank : List.of(ours, theirs)) {
      photos.keep(tank, UUID.randomUUID().toString(), new byte[] {1}, Instant.now());
      members.note(tank.household(), new Change(Instant.now(), keeper.id(), null, What.JOINED, Role.KEEPER));
    }
    for (String table : List.of("photo", "household_change")) {
      assertThat(countAs(ours.household(), table)).as(table).isEqualTo(1);
      assertThat(changedAs(ours, "delete from " + table + " where household_id = ?1", theirs.household())).as(table).isZero();
      try (Connection connection = database.getConnection();
          ResultSet count = connection.createStatement().executeQuery("select count(*) from " + table)) {
        assertThat(count.next()).isTrue();
        assertThat(count.getLong(1)).as(table).isZero();
      }
    }
    assertThat(persons.changes(keeper.id())).extracting(ChangeIn::household).containsExactlyInAnyOrder(ours.household(), theirs.household());
  }

  @Test
  void at_start_every_journal_is_read_all_the_same() throws SQLException {
    feed(ours, 3);
    feed(theirs, 2);
    verified.check();
    assertThat(verified.faults()).isEmpty();
    changedAs(theirs, "update journal_entry set written = replace(written, '3.5', '8.5') where household_id = ?1 and seq = 2", theirs.household());
    verified.check();
    assertThat(verified.faults()).containsOnlyKeys(theirs);
    changedAs(theirs, "update journal_entry set written = replace(written, '8.5', '3.5') where household_id = ?1", theirs.household());
    verified.check();
    assertThat(verified.faults()).isEmpty();
  }

  private void feed(TankKey tank, int times) {
    for (int i = 1; i <= times; i++) {
      new Push(store).take(tank, List.of(Phone.feeding(UUID.randomUUID().toString(), tank.tank(), UUID.randomUUID().toString(), i, "teo")),
          by -> true, Instant.now());
    }
  }

  private long countAs(String household) {
    return countAs(household, "journal_entry");
  }

  private long countAs(String household, String table) {
    return QuarkusTransaction.requiringNew().call(() -> {
      fence.enter(household);
      return ((Number) entities.createNativeQuery("select count(*) from " + table).getSingleResult()).longValue();
    });
  }

  private int changedAs(TankKey tank, String statement, String household) {
    return QuarkusTransaction.requiringNew().call(() -> {
      fence.enter(tank.household());
      return entities.createNativeQuery(statement).setParameter(1, household).executeUpdate();
    });
  }
}
