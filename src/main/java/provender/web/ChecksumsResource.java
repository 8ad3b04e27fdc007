package provender.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.inject.Singleton;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import provender.people.Seat;
import provender.sync.JournalStore;
import provender.sync.JournalStore.Sum;
import provender.sync.Pull;
import provender.sync.TankKey;

/** What a journal adds up to, page by page. */
@Path("/api/v1/tanks/{tank}/checksums")
@Singleton
@Produces(MediaType.APPLICATION_JSON)
class ChecksumsResource {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int MOST_PLACES = 100_000;
  private static final String CHECKSUM =
      "The checksum of a page is the sum of its entries' hashes modulo 2^32. Arithmetic is on 32-bit words: mix(h, w) ="
          + " (h xor w) * 0x01000193, and start(tag) = mix(0x811C9DC5, code of the tag's letter). A text is start('s') mixed with each"
          + " of its UTF-16 units; a number start('n') mixed with the upper and the lower word of its IEEE 754 double (-0 as 0);"
          + " true, false and null are start('t'), start('f'), start('z'); a list is start('a') mixed with each item's hash; an object"
          + " is start('o') mixed with the sum over its members of mix(key, value), where a key is hashed as a text with tag 'k'. An"
          + " entry is hashed as the object the pull gives, with seq and without receivedAt. Sums do not depend on the order of"
          + " entries or members.";

  private final JournalStore journals;
  private final Signed signed;

  ChecksumsResource(JournalStore journals, Signed signed) {
    this.journals = journals;
    this.signed = signed;
  }

  @GET
  @Operation(
      summary = "What each page of places adds up to, so that a phone can fetch anew only what differs",
      description = CHECKSUM)
  public String checksums(@PathParam("tank") String tank, @QueryParam("size") @DefaultValue("500") String size) {
    Seat seat = signed.seat(tank);
    TankKey key = new TankKey(seat.household(), seat.tank());
    int places = (int) Parameter.whole("size", size, 1, MOST_PLACES);
    ObjectNode answer = JSON.createObjectNode();
    ArrayNode pages = answer.putArray("pages");
    for (Sum page : new Pull(journals).checksums(key, places)) {
      pages.addObject().put("from", page.from()).put("to", page.to()).put("count", page.count()).put("checksum", page.checksum());
    }
    return Json.ended(answer, journals.position(key)).toString();
  }
}
