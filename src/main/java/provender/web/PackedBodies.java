package provender.web;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.ext.Provider;
import jakarta.ws.rs.ext.ReaderInterceptor;
import jakarta.ws.rs.ext.ReaderInterceptorContext;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.Set;
import java.util.zip.GZIPInputStream;

/** Unpacks what comes packed (RFC 9110, Content-Encoding), held to the length that any other request is held to. */
@Provider
class PackedBodies implements ReaderInterceptor {
  /** RFC 9110, 8.4.1.3: the second is an old name of the first. */
  private static final Set<String> GZIP = Set.of("gzip", "x-gzip");

  @Override
  public Object aroundReadFrom(ReaderInterceptorContext context) throws IOException {
    String coding = context.getHeaders().getFirst(HttpHeaders.CONTENT_ENCODING);
    if (coding != null) {
      if (!GZIP.contains(coding.toLowerCase(Locale.ROOT))) {
        throw Problem.otherCoding();
      }
      context.setInputStream(new ByteArrayInputStream(unpacked(context.getInputStream())));
      context.getHeaders().remove(HttpHeaders.CONTENT_ENCODING);
    }
    return context.proceed();
  }

  /** No more than may be held is ever unpacked, however little it was packed to. */
  private static byte[] unpacked(InputStream packed) {
    byte[] plain;
    try (GZIPInputStream unpacking = new GZIPInputStream(packed)) {
      plain = unpacking.readNBytes(Headers.MOST_BYTES + 1);
    } catch (IOException broken) {
      throw Problem.badRequest("this cannot be unpacked", "body", "gzip (RFC 1952), as Content-Encoding says");
    }
    if (plain.length > Headers.MOST_BYTES) {
      throw Problem.tooLarge("a request holds at most 1 MiB when unpacked");
    }
    return plain;
  }
}
