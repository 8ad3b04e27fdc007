package provender.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.context.ManagedExecutor;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.logging.Logger;
import provender.people.Households.Fault;
import provender.people.Keeper;
import provender.people.Mailboxes;
import provender.people.Sessions;

/** One's own mail address, and the way back in by it. */
@Path("/api/v1/mailbox")
@Singleton
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
class MailboxResource {
  private static final Logger LOG = Logger.getLogger("provender.web");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Mailboxes mailboxes;
  private final Sessions sessions;
  private final Signed signed;
  private final ManagedExecutor aside;

  MailboxResource(Mailboxes mailboxes, Sessions sessions, Signed signed, ManagedExecutor aside) {
    this.mailboxes = mailboxes;
    this.sessions = sessions;
    this.signed = signed;
    this.aside = aside;
  }

  @GET
  @Consumes(MediaType.WILDCARD)
  @Operation(
      summary = "Whether this server sends letters, and the address of whoever is signed in",
      description = "sends is true or false; address is a text or null, and null for who is not signed in.")
  public String tell() {
    Keeper keeper = signed.known();
    return JSON.createObjectNode().put("sends", mailboxes.areRead())
        .put("address", keeper == null ? null : mailboxes.address(keeper)).toString();
  }

  @PUT
  @Operation(
      summary = "Give a mail address, or with an empty one take it back; takes the password once more",
      description = "A link is sent to it, good for 10 minutes; the address counts once that was followed. language: such as en, for the"
          + " letter. 409 with kind no-mail where this server sends no letters, and mail-failed when the mail server takes none.")
  public Response offer(String body) {
    Keeper keeper = signed.keeper();
    JsonNode asked = Json.object(body);
    Instant now = Instant.now();
    String address = asked.path("address").asText("");
    List<Fault> faults = new ArrayList<>(sessions.confirm(keeper, "password", Asked.text(asked, "password"), now));
    if (faults.isEmpty() && address.isBlank()) {
      mailboxes.forget(keeper);
    } else if (faults.isEmpty()) {
      faults.addAll(sent(keeper, address, asked.path("language").asText(""), now));
    }
    if (!faults.isEmpty()) {
      throw Problem.badFields(Asked.errors(faults));
    }
    return Response.noContent().build();
  }

  @POST
  @Path("/confirmation")
  @Operation(summary = "Say that a letter arrived, with the code from its link; needs nobody signed in")
  public Response confirm(String body) {
    if (!mailboxes.confirm(Asked.text(Json.object(body), "code"), Instant.now())) {
      throw Problem.badRequest("the code cannot be used", "code", "the code of a letter that is not used up and not older than 10 minutes");
    }
    return Response.noContent().build();
  }

  @POST
  @Path("/reset")
  @Operation(
      summary = "Ask for a letter with a link for a new password, good once and for 10 minutes",
      description = "202 for every name, whether someone has it or not: a letter goes out only to an address that was confirmed. The link"
          + " is followed with POST /api/v1/reset. 409 with kind no-mail where this server sends no letters.")
  public Response helpBackIn(String body) {
    JsonNode asked = Json.object(body);
    String name = Asked.text(asked, "name");
    String language = asked.path("language").asText("");
    mustSend();
    // Beside the answer, so that nobody can tell by its delay whether there is such a person.
    aside.runAsync(() -> mailboxes.helpBackIn(name, language, Instant.now()))
        .exceptionally(fault -> {
          LOG.warn("a letter was not sent: " + fault.getMessage());
          return null;
        });
    return Response.accepted().build();
  }

  private List<Fault> sent(Keeper keeper, String address, String language, Instant now) {
    mustSend();
    try {
      return mailboxes.offer(keeper, address, language, now);
    } catch (RuntimeException fault) {
      LOG.warn("a letter was not sent: " + fault.getMessage());
      throw Problem.conflict("mail-failed", "the mail server did not take the letter");
    }
  }

  private void mustSend() {
    if (!mailboxes.areRead()) {
      throw Problem.conflict("no-mail", "this server sends no letters");
    }
  }
}
