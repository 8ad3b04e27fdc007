package provender.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
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
import provender.people.Role;
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
              + " without anything else that the file may hold. 409 with kind entry-missing: push the entry first. 410: it was erased.")
  public Response keep(@PathParam("tank") String tank, @PathParam("photo") String photo, byte[] sent) {
    Seat seat = signed.seatToRecord(tank);
    Photos.Outcome outcome = kept(key(seat), photo, sent);
    return switch (outcome) {
      case NO_ENTRY, NOT_THEIRS -> throw entryMissing();
      case ERASED -> throw Problem.gone("picture-erased", "this picture was erased and is not taken again");
      case FULL -> throw Problem.tooLarge("a tank holds at most " + Photos.MOST_IN_A_TANK + " photos");
      case KEPT, KNOWN -> Response.status(outcome == Photos.Outcome.KEPT ? 201 : 200)
          .entity(JsonNodeFactory.instance.objectNode().put("id", photo).put("outcome", outcome.name().toLowerCase(Locale.ROOT)).toString())
          .build();
    };
  }

  @GET
  @Produces(JPEG)
  @Operation(summary = "The picture of an entry of kind photo, as JPEG; 404 while it has not come yet, and once it was erased")
  public Response show(@PathParam("tank") String tank, @PathParam("photo") String photo) {
    byte[] jpeg = store.find(key(signed.seat(tank)), photo);
    if (jpeg == null) {
      throw Problem.notFound();
    }
    return Response.ok(jpeg, JPEG).header("Cross-Origin-Resource-Policy", "same-origin").build();
  }

  @DELETE
  @Operation(
      summary = "Erase the picture of an entry of kind photo, for good; the entry stays",
      description =
          "By whoever took it, or a steward. One that is still on its way is not taken any more. 409 with kind entry-missing: push the entry first.")
  public void erase(@PathParam("tank") String tank, @PathParam("photo") String photo) {
    Seat seat = signed.seatToRecord(tank);
    String asking = signed.keeper().id();
    Photos.Outcome outcome =
        photos.erase(key(seat), photo, takenBy -> takenBy.equals(asking) || seat.role() == Role.STEWARD, Instant.now());
    switch (outcome) {
      case NO_ENTRY -> throw entryMissing();
      case NOT_THEIRS -> throw Problem.notAllowed("picture-of-another", "only whoever took a picture, or a steward, may erase it");
      default -> { }
    }
  }

  private static Problem entryMissing() {
    return Problem.conflict("entry-missing", "the journal has no entry of kind photo under this id");
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
