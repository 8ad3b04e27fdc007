/**
 * Who is this, and which tanks may they touch? Keepers, their households and roles, and the sessions of their phones.
 *
 * <p>Entry: {@link provender.people.Sessions} for coming and going, {@link provender.people.Households} and {@link
 * provender.people.FirstStart} for who is let in; the port to wherever people are kept is {@link
 * provender.people.PeopleStore}.
 *
 * <p>Decided: a session lasts 180 days, because a phone at the tank that asks for a password with wet hands is a phone
 * that does not log; it can be ended at any time. Only a hash of its token is kept. Wrong passwords slow down the pair of
 * name and address that tries them and nobody else, so nobody can be locked out by a stranger.
 */
@NullMarked
package provender.people;

import org.jspecify.annotations.NullMarked;
