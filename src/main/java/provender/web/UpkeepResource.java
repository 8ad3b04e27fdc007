package provender.web;

import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Singleton;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jspecify.annotations.Nullable;
import provender.people.PeopleStore;
import provender.people.Role;
import provender.sync.Upkeep;

/** A plain page for whoever runs the server: on the machine itself, or signed in as a steward. */
@Path("/api/v1/upkeep")
@Singleton
class UpkeepResource {
  private static final double BYTES_PER_GIB = 1024.0 * 1024 * 1024;
  private static final List<String> PASSED_ON = List.of("X-Forwarded-For", "Forwarded", "X-Real-IP");

  private final Upkeep upkeep;
  private final PeopleStore people;
  private final Signed signed;

  UpkeepResource(Upkeep upkeep, PeopleStore people, Signed signed) {
    this.upkeep = upkeep;
    this.people = people;
    this.signed = signed;
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  @Operation(summary = "How the journals are kept: verification, backup, sizes, disk room; on this machine, or for a steward")
  public String page(HttpServerRequest request) {
    if (!isThisMachine(request) && !isSteward()) {
      throw Problem.notAllowed("steward-only", "only a steward may see this, or whoever sits at the server");
    }
    Upkeep.Report now = upkeep.report();
    Instant verified = now.verified();
    return "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\">"
        + "<title>Provender: upkeep</title><h1>Upkeep</h1><dl>"
        + row("Journals", now.damaged().isEmpty() ? "sound" : "DAMAGED and not served: " + String.join(", ", now.damaged()))
        + row("Verified", verified == null ? "never" : verified.toString())
        + row("Last backup", now.lastBackup() == null ? "none" : now.lastBackup().toString())
        + row("Tanks", String.valueOf(now.journals()))
        + row("Entries", String.valueOf(now.entries()))
        + row("Disk room", String.format(Locale.ROOT, "%.1f GiB", now.freeBytes() / BYTES_PER_GIB))
        + "</dl></html>";
  }

  private boolean isSteward() {
    return people.memberships(signed.keeper().id()).stream().anyMatch(one -> one.role() == Role.STEWARD);
  }

  /** What a proxy on this machine passes on comes from elsewhere. */
  private static boolean isThisMachine(HttpServerRequest request) {
    @Nullable String address = request.remoteAddress() == null ? null : request.remoteAddress().hostAddress();
    boolean loopback = address != null && (address.startsWith("127.") || address.equals("::1") || address.equals("0:0:0:0:0:0:0:1"));
    return loopback && PASSED_ON.stream().noneMatch(header -> request.getHeader(header) != null);
  }

  private static String row(String name, String value) {
    String safe = value.replace("&", "&amp;").replace("<", "&lt;");
    return "<dt>" + name + "</dt><dd>" + safe + "</dd>";
  }
}
