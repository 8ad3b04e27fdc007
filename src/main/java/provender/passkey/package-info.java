/**
 * Is it really they, without a password? Passkeys (W3C Web Authentication, level 2): made by a phone, kept here as a public key
 * only, and asked for a signature over a challenge that holds for five minutes and once.
 *
 * <p>Entry: {@link provender.passkey.Passkeys}; the port to wherever they are kept is {@link provender.passkey.PasskeyStore}.
 *
 * <p>Decided: a passkey stands beside the password and never replaces it, so that who loses a phone is not locked out. The phone
 * must ask for its owner's finger, face or code each time. Attestation is not asked for: which maker a phone comes from is none
 * of a server's business. Challenges carry their own proof instead of being remembered, so that nobody can fill the memory with them.
 */
@NullMarked
package provender.passkey;

import org.jspecify.annotations.NullMarked;
