package provender.web;

import jakarta.inject.Singleton;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;

/** No id has U+0000 in it, and PostgreSQL would not even look for one: such an address leads nowhere. */
@Singleton
class PlainAddresses {
  @ServerRequestFilter
  @Nullable Response check(ContainerRequestContext request) {
    return request.getUriInfo().getPath().indexOf('\0') >= 0 ? Problem.notFound().response() : null;
  }
}
