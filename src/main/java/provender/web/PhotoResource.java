package provender.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.photo.NotAPicture;
import provender.photo.PhotoStore;
import provender.photo.Photos;
import provender.sync.JournalStore;
import provender.sync.TankKey;

/** Pictures beside the entries they belong to; they come after their entry, and never hold one up. */
@Path("/api/v1/tanks/{tank}/photos/{photo}")
@Singleton
class PhotoResource {
  private static final String JPEG = "image/jpeg";

  private final PhotoStore store;
  private final Photos photos;
  private final Signed signed;

  PhotoResource(JournalStore journals, PhotoStore store, Signed signed) {
    this.store = store;
    this.photos = new Photos(journals, store);
    this.signed = signed;
  }

  @PUT
  @Consumes(JPEG)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Send the picture of an entry of kind photo, under the entry's id; the first one stands",
      description =
          "A JPEG of at most 1 MiB and 2048 pixels on a side. It is written anew at no more than 1600 pixels, turned as its pixels lie,"
              + " without anything else that the file may hold. 409 with kind entry-missing: push the entry first.")
  public Response keep(@PathParam("tank") String tank, @PathParam("photo") String photo, byte[] sent) {
    Seat seat = signed.seatToRecord(tank);
    Photos.Outcome outcome = kept(key(seat), photo, sent);
    return switch (outcome) {
      case NO_ENTRY -> throw Problem.conflict("entry-missing", "the journal has no entry of kind photo under this id");
      case FULL -> throw Problem.tooLarge("a tank holds at most " + Photos.MOST_IN_A_TANK + " photos");
      case KEPT, KNOWN -> Response.status(outcome == Photos.Outcome.KEPT ? 201 : 200)
          .entity(JsonNodeFactory.instance.objectNode().put("id", photo).put("outcome", outcome.name().toLowerCase(Locale.ROOT)).toString())
          .build();
    };
  }

  @GET
  @Produces(JPEG)
  @Operation(summary = "The picture of an entry of kind photo, as JPEG; 404 while it has not come yet")
  public Response show(@PathParam("tank") String tank, @PathParam("photo") String photo) {
    byte[] jpeg = store.find(key(signed.seat(tank)), photo);
    if (jpeg == null) {
      throw Problem.notFound();
    }
    return Response.ok(jpeg, JPEG).header("Cross-Origin-Resource-Policy", "same-origin").build();
  }

  private Photos.Outcome kept(TankKey tank, String photo, byte[] sent) {
    try {
      return photos.keep(tank, photo, sent, Instant.now());
    } catch (NotAPicture refused) {
      throw Problem.badRequest("this picture cannot be used", "body", String.valueOf(refused.getMessage()));
    }
  }

  private static TankKey key(Seat seat) {
    return new TankKey(seat.household(), seat.tank());
  }
}
