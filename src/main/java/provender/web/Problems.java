package provender.web;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import provender.sync.DamagedJournal;

/** Turns every fault into a problem; what went wrong inside is written to the log and to nobody else. */
final class Problems {
  private static final Logger LOG = Logger.getLogger("provender.web");

  @ServerExceptionMapper
  Response problem(Problem problem) {
    return problem.response();
  }

  @ServerExceptionMapper
  Response damaged(DamagedJournal damaged) {
    return Problem.damaged().response();
  }

  @ServerExceptionMapper
  Response http(WebApplicationException fault) {
    int status = fault.getResponse().getStatus();
    String title = fault.getResponse().getStatusInfo().getReasonPhrase();
    return Problem.of(status, title).response();
  }

  @ServerExceptionMapper
  Response unforeseen(RuntimeException fault) {
    LOG.error("a request failed", fault);
    return Problem.of(500, "something went wrong here; nothing was lost that was answered as kept").response();
  }
}
