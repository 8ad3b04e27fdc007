/**
 * Who is this, and which tanks may they touch? Keepers, their households and roles, and the sessions of their phones.
 *
 * <p>Entry: {@link provender.people.Sessions} for coming and going, {@link provender.people.Households} and {@link
 * provender.people.FirstStart} for who is let in, {@link provender.people.Members} for what changes among them, {@link
 * provender.people.Resets} for a forgotten password; the ports to wherever people are kept are {@link
 * provender.people.PeopleStore}, {@link provender.people.MemberStore} and {@link provender.people.SessionStore}.
 *
 * <p>Decided: a session lasts 180 days, because a phone at the tank that asks for a password with wet hands is a phone
 * that does not log, and 60 days without use; it can be ended at any time. Only a hash of its token is kept. Wrong passwords slow down the pair of
 * name and address that tries them and nobody else, so nobody can be locked out by a stranger. Whoever left stays known by
 * name, since what they wrote stays; a household always keeps one steward; and a steward resets a password only of people
 * who belong to no household but theirs.
 */
@NullMarked
package provender.people;

import org.jspecify.annotations.NullMarked;
