package provender.people;

/** What someone may do in a household: read, record, or also change the set-up and invite. */
public enum Role {
  GUEST,
  KEEPER,
  STEWARD;

  public boolean mayRecord() {
    return this != GUEST;
  }
}
