package provender.web;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.HostAndPort;
import provender.passkey.Place;

/** Where the browser believes it is. A passkey holds for the name it was made for, so a wrong belief opens nothing. */
final class Places {
  private Places() {}

  static Place of(HttpServerRequest request) {
    HostAndPort asked = request.authority();
    Place place = asked == null ? null : Place.of(asked.toString());
    if (place == null) {
      throw Problem.needsName();
    }
    return place;
  }
}
