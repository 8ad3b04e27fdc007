/**
 * How does a letter leave this server? By the mail server that its settings name ({@code quarkus.mailer.*}), written in the words
 * of {@code shared/text}; without {@code quarkus.mailer.from} none does.
 *
 * <p>Entry: {@link provender.people.Letters}, which {@link provender.mail.MailedLetters} is.
 *
 * <p>Decided: a link in a letter begins with {@code provender.address} and never with what a request called this server, since
 * whoever asks could call it anything and would be sent the code.
 */
@NullMarked
package provender.mail;

import org.jspecify.annotations.NullMarked;
