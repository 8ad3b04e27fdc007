package provender.sync;

/** A journal that no longer adds up to what was written: nothing is read from it or written to it until it is put right. */
public final class DamagedJournal extends RuntimeException {
  public DamagedJournal(TankKey tank) {
    super("the journal of tank " + tank.tank() + " is damaged", null, false, false);
  }
}
