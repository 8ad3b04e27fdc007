package provender.lan;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x509.GeneralName;

/** A name or number under which a server is reached inside a house. */
public record LanAddress(String written, boolean isNumber) {
  private static final Pattern NUMBER = Pattern.compile("[0-9a-fA-F:]*:[0-9a-fA-F:.]*|\\d{1,3}(\\.\\d{1,3}){3}");
  /** The last part begins with a letter, or a mistyped number would pass for a name. */
  private static final Pattern NAME =
      Pattern.compile("(?=.{1,253}$)([a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?\\.)*[a-z]([a-z0-9-]{0,61}[a-z0-9])?");

  /** Reads a list with commas; refuses what is neither a host name in small letters nor an IP address. */
  public static List<LanAddress> read(String list) {
    LinkedHashSet<LanAddress> addresses = new LinkedHashSet<>();
    for (String part : list.split(",", -1)) {
      addresses.add(one(part.strip()));
    }
    return new ArrayList<>(addresses);
  }

  private static LanAddress one(String text) {
    if (NUMBER.matcher(text).matches()) {
      return new LanAddress(number(text).getHostAddress(), true);
    }
    if (NAME.matcher(text).matches()) {
      return new LanAddress(text, false);
    }
    throw refused(text);
  }

  /** As it stands in the server's own certificate. */
  GeneralName inCertificate() {
    return isNumber
        ? new GeneralName(GeneralName.iPAddress, new DEROctetString(number(written).getAddress()))
        : new GeneralName(GeneralName.dNSName, written);
  }

  /** As it stands in a constraint: a number with a mask of all its bits (RFC 5280, 4.2.1.10). */
  GeneralName inConstraint() {
    if (!isNumber) {
      return inCertificate();
    }
    byte[] number = number(written).getAddress();
    byte[] withMask = new byte[number.length * 2];
    Arrays.fill(withMask, (byte) 0xFF);
    System.arraycopy(number, 0, withMask, 0, number.length);
    return new GeneralName(GeneralName.iPAddress, new DEROctetString(withMask));
  }

  private static InetAddress number(String text) {
    try {
      return InetAddress.getByName(text);
    } catch (UnknownHostException noNumber) {
      throw refused(text);
    }
  }

  private static IllegalArgumentException refused(String text) {
    return new IllegalArgumentException(
        "provender.lan.names takes host names in small letters and IP addresses with commas between, such as tank.home.arpa,192.168.1.20; not \""
            + text + "\"");
  }
}
