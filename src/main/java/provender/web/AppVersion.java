package provender.web;

import jakarta.inject.Singleton;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;

/**
 * Lets in every app whose schema number this server still understands; whoever sends none, such as a script, speaks for
 * itself. A number newer than this server's is welcome too: what it does not know it keeps unharmed.
 */
@Singleton
class AppVersion {
  static final String HEADER = "X-Provender-App";

  private final int oldest;
  private final int newest;

  AppVersion(
      @ConfigProperty(name = "provender.app.oldest") int oldest, @ConfigProperty(name = "provender.app.newest") int newest) {
    this.oldest = oldest;
    this.newest = newest;
  }

  @ServerRequestFilter
  @Nullable Response check(ContainerRequestContext request) {
    String said = request.getHeaderString(HEADER);
    if (said == null) {
      return null;
    }
    int number;
    try {
      number = Integer.parseInt(said);
    } catch (NumberFormatException unreadable) {
      return Problem.badRequest("a header cannot be used", HEADER, "the schema number of the app, from " + oldest + " to " + newest)
          .response();
    }
    if (number >= oldest) {
      return null;
    }
    Response told =
        Problem.appTooOld(
                "this app is too old for the server (" + number + "; " + oldest + " to " + newest + " are understood):"
                    + " close it and open it again while there is a network. What is on the phone stays there and is sent then")
            .response();
    return Response.fromResponse(told).header("Upgrade", "provender-app/" + newest).build();
  }
}
