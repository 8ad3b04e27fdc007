package provender.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Role;
import provender.people.Seat;
import provender.people.TankShelf;

/** Tanks put away and brought back, journal and all. */
@Path("/api/v1/tanks-away")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class TankShelfResource {
  private final TankShelf shelf;
  private final Signed signed;

  TankShelfResource(TankShelf shelf, Signed signed) {
    this.shelf = shelf;
    this.signed = signed;
  }

  @GET
  @Operation(summary = "The tanks that the signed-in keeper's households have put away")
  public String away() {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    ArrayNode tanks = answer.putArray("tanks");
    for (Seat seat : shelf.away(signed.keeper().id())) {
      tanks.addObject().put("id", seat.tank()).put("household", seat.household()).put("name", seat.tankName())
          .put("role", SessionCookies.lower(seat.role().name()));
    }
    return answer.toString();
  }

  @PUT
  @Path("/{tank}")
  @Operation(
      summary = "Put a tank away; stewards only",
      description = "It is listed and served no longer, and phones keep what they have not sent. Nothing of its journal is lost.")
  public void putAway(@PathParam("tank") String tank) {
    Seat seat = signed.seat(tank);
    signed.stewardOf(seat.household());
    shelf.putAway(seat.household(), tank, Instant.now());
  }

  @DELETE
  @Path("/{tank}")
  @Operation(summary = "Bring a tank back that was put away; stewards only")
  public void bringBack(@PathParam("tank") String tank) {
    for (Seat seat : shelf.away(signed.keeper().id())) {
      if (seat.tank().equals(tank)) {
        if (seat.role() != Role.STEWARD) {
          throw Problem.notAllowed("steward-only", "only a steward of the household may do this");
        }
        shelf.bringBack(seat.household(), tank);
        return;
      }
    }
    throw Problem.notFound();
  }
}
