package provender.store;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

/** The rows of people and of what belongs to them. */
final class PeopleRows {
  private PeopleRows() {}

  @ApplicationScoped
  static class Keepers implements PanacheRepositoryBase<KeeperRow, String> {}

  @ApplicationScoped
  static class Memberships implements PanacheRepositoryBase<MembershipRow, MembershipRow.Key> {}

  @ApplicationScoped
  static class Households implements PanacheRepositoryBase<HouseholdRow, String> {}

  @ApplicationScoped
  static class PhoneSessions implements PanacheRepositoryBase<SessionRow, String> {}

  @ApplicationScoped
  static class Invitations implements PanacheRepositoryBase<InvitationRow, InvitationRow.Key> {}

  @ApplicationScoped
  static class Changes implements PanacheRepositoryBase<ChangeRow, ChangeRow.Key> {}

  @ApplicationScoped
  static class Resets implements PanacheRepositoryBase<ResetRow, String> {}

  @ApplicationScoped
  static class Unconfirmed implements PanacheRepositoryBase<MailboxRow, String> {}

  @ApplicationScoped
  static class Passkeys implements PanacheRepositoryBase<PasskeyRow, PasskeyRow.Key> {}
}
