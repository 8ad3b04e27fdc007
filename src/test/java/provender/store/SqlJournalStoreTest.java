package provender.store;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import provender.people.PeopleStore;
import provender.sync.JournalStore;
import provender.sync.JournalStoreContract;
import provender.sync.TankKey;

@QuarkusTest
class SqlJournalStoreTest extends JournalStoreContract {
  @Inject JournalStore store;
  @Inject PeopleStore people;

  private final String household = "home-" + UUID.randomUUID();

  @BeforeEach
  void furnish() {
    people.addHousehold(household, "Home");
    people.addTank(household, "reef", "Reef", "Europe/Berlin");
  }

  @Override
  protected JournalStore store() {
    return store;
  }

  @Override
  protected TankKey tank() {
    return new TankKey(household, "reef");
  }
}
