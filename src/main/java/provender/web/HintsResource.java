package provender.web;

import jakarta.inject.Singleton;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.Sse;
import jakarta.ws.rs.sse.SseEventSink;
import io.smallrye.common.annotation.Blocking;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.sync.JournalStore;
import provender.sync.TankKey;

/** Where a phone listens for news of a journal. */
@Path("/api/v1/tanks/{tank}/hints")
@Singleton
class HintsResource {
  private final JournalStore journals;
  private final Signed signed;
  private final Hints hints;

  HintsResource(JournalStore journals, Signed signed, Hints hints) {
    this.journals = journals;
    this.signed = signed;
    this.hints = hints;
  }

  @GET
  @Blocking
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @Operation(
      summary = "Server-sent events: the tank and its head at once and after each commit",
      description =
          "Each event's data is {\"tank\": id, \"head\": number}; comments keep the line open. A hint says only that a pull is worth"
              + " while; a lost one costs nothing but time. The server ends the line after ten minutes, and the listener asks anew.")
  public void listen(@PathParam("tank") String tank, @Context SseEventSink sink, @Context Sse sse) {
    Seat seat = signed.seat(tank);
    TankKey key = new TankKey(seat.household(), seat.tank());
    hints.listen(key, sink, sse, journals.position(key).head());
  }
}
