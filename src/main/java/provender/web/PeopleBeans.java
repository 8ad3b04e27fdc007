package provender.web;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import provender.passkey.PasskeyStore;
import provender.passkey.Passkeys;
import provender.people.Erasure;
import provender.people.FirstStart;
import provender.people.Households;
import provender.people.Letters;
import provender.people.MailboxStore;
import provender.people.Mailboxes;
import provender.people.MemberStore;
import provender.people.Members;
import provender.people.PeopleStore;
import provender.people.PersonStore;
import provender.people.Resets;
import provender.people.SessionStore;
import provender.people.Sessions;

/** One of each of those who keep the rules about people, for every resource: they remember who guessed, and how often. */
final class PeopleBeans {

  @Produces
  @Singleton
  Sessions sessions(PeopleStore people, SessionStore sessions, MemberStore members) {
    return new Sessions(people, sessions, members);
  }

  @Produces
  @Singleton
  Households households(PeopleStore people, MemberStore members) {
    return new Households(people, members);
  }

  @Produces
  @Singleton
  FirstStart firstStart(PeopleStore people, Households households) {
    return new FirstStart(people, households);
  }

  @Produces
  @Singleton
  Members members(MemberStore members) {
    return new Members(members);
  }

  @Produces
  @Singleton
  Resets resets(PeopleStore people, MemberStore members, SessionStore sessions) {
    return new Resets(people, members, sessions);
  }

  @Produces
  @Singleton
  Mailboxes mailboxes(PeopleStore people, MailboxStore mailboxes, Resets resets, Letters letters) {
    return new Mailboxes(people, mailboxes, resets, letters);
  }

  @Produces
  @Singleton
  Passkeys passkeys(PasskeyStore passkeys) {
    return new Passkeys(passkeys);
  }

  @Produces
  @Singleton
  Erasure erasure(PersonStore persons, MemberStore members) {
    return new Erasure(persons, members);
  }
}
