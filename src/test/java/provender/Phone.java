package provender;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** A phone reduced to what it says over HTTP. */
public final class Phone {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** HTTP/1.1, as browsers speak it where there is no TLS. */
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).cookieHandler(new CookieManager()).build();
  private final String url;
  private String keeper = "";

  private Phone(String url) {
    this.url = url;
  }

  public static Phone stranger(String url) {
    return new Phone(url);
  }

  public static Phone signedIn(String url, String name, String password) throws Exception {
    Phone phone = new Phone(url);
    ObjectNode who = JSON.createObjectNode().put("name", name).put("password", password);
    phone.keeper = JSON.readTree(phone.post("/api/v1/session", who.toString()).body()).path("keeper").path("id").asText();
    return phone;
  }

  public String keeper() {
    return keeper;
  }

  public List<String> tanks() throws Exception {
    List<String> ids = new ArrayList<>();
    JSON.readTree(get("/api/v1/tanks").body()).path("tanks").forEach(tank -> ids.add(tank.path("id").asText()));
    return ids;
  }

  public JsonNode push(String tank, JsonNode... entries) throws Exception {
    ObjectNode batch = JSON.createObjectNode();
    batch.putArray("entries").addAll(List.of(entries));
    return JSON.readTree(post("/api/v1/tanks/" + tank + "/entries", batch.toString()).body());
  }

  public List<JsonNode> pullAll(String tank) throws Exception {
    List<JsonNode> all = new ArrayList<>();
    boolean more = true;
    while (more) {
      long after = all.isEmpty() ? 0 : all.get(all.size() - 1).path("seq").asLong();
      JsonNode page = JSON.readTree(get("/api/v1/tanks/" + tank + "/entries?after=" + after).body());
      page.path("entries").forEach(all::add);
      more = page.path("more").asBoolean();
    }
    return all;
  }

  public HttpResponse<String> get(String path) throws Exception {
    return client.send(HttpRequest.newBuilder(URI.create(url + path)).build(), BodyHandlers.ofString());
  }

  public HttpResponse<String> post(String path, String body) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(url + path))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body))
            .build();
    return client.send(request, BodyHandlers.ofString());
  }

  public HttpResponse<String> delete(String path) throws Exception {
    return client.send(HttpRequest.newBuilder(URI.create(url + path)).DELETE().build(), BodyHandlers.ofString());
  }

  /** A feeding that is valid in every field. */
  public static ObjectNode feeding(String id, String tank, String device, long deviceSeq, String keeper) {
    ObjectNode entry = JSON.createObjectNode();
    entry.put("id", id).put("tank", tank).put("device", device).put("deviceSeq", deviceSeq);
    entry.put("kind", "feeding").put("v", 1).put("happenedAt", "2026-06-15T08:10:00+02:00");
    entry.put("zone", "Europe/Berlin").put("recordedAt", "2026-06-15T06:10:02Z").put("by", keeper);
    entry.putObject("body").putArray("items").addObject().put("food", "mysis_frozen").put("grams", 3.5);
    return entry;
  }

  /** A change of one field of a feeder, by someone who had seen the change in such a place (0: none). */
  public static ObjectNode switched(String tank, String device, long deviceSeq, String keeper, boolean running, long saw) {
    ObjectNode entry = feeding(UUID.randomUUID().toString(), tank, device, deviceSeq, keeper).put("kind", "record");
    ObjectNode body = entry.putObject("body").put("record", "feeder").put("key", "left");
    body.putObject("set").put("running", running);
    body.putObject("saw").put("running", saw);
    return entry;
  }
}
