package provender.pages;

import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import provender.sync.JournalStore;
import provender.sync.JournalStoreContract;
import provender.sync.TankKey;

/** The phone's store keeps the contract of the server's stores, in a real browser. */
class PhoneStoreIT extends JournalStoreContract {
  private static BrowserJournalStore store;

  private final TankKey tank = new TankKey("home", "reef-" + UUID.randomUUID());

  @BeforeAll
  static void open() {
    store = new BrowserJournalStore("contract");
  }

  @AfterAll
  static void close() {
    store.close();
  }

  @Override
  protected JournalStore store() {
    return store;
  }

  @Override
  protected TankKey tank() {
    return tank;
  }
}
