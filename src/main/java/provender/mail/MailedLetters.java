package provender.mail;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.Mailer;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import provender.people.Letters;
import provender.report.LetterInWords;

/** Letters by SMTP. */
@Singleton
class MailedLetters implements Letters {
  private final Mailer mailer;
  private final boolean sent;
  private final String home;

  MailedLetters(
      Mailer mailer,
      @ConfigProperty(name = "quarkus.mailer.from") Optional<String> from,
      @ConfigProperty(name = "provender.address") Optional<String> home) {
    this.mailer = mailer;
    this.sent = from.isPresent();
    this.home = home.map(address -> address.replaceFirst("/+$", "")).orElse("");
  }

  /** A server that would send links to nowhere does not start. */
  void check(@Observes StartupEvent started) {
    if (sent && !home.matches("https?://[^/\\s]+")) {
      throw new IllegalStateException("provender.address takes the address people open the app under, such as https://tank.example,"
          + " when quarkus.mailer.from is set; it is \"" + home + "\"");
    }
  }

  @Override
  public boolean areSent() {
    return sent;
  }

  @Override
  public void post(String address, About about, String language, String name, String code) {
    String page = switch (about) {
      case ADDRESS -> "mailbox";
      case PASSWORD -> "reset";
    };
    LetterInWords letter = LetterInWords.of(page, language, Map.of("name", name, "link", home + "/#/" + page + "/" + code));
    mailer.send(Mail.withText(address, letter.subject(), letter.text()));
  }
}
