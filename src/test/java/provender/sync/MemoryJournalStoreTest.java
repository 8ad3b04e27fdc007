package provender.sync;

class MemoryJournalStoreTest extends JournalStoreContract {
  private final MemoryJournalStore store = new MemoryJournalStore();

  @Override
  protected JournalStore store() {
    return store;
  }

  @Override
  protected TankKey tank() {
    return new TankKey("home", "reef");
  }
}
