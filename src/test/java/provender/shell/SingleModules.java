package provender.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Single modules of the phone for tests that work with them alone; the app itself holds them joined. */
public final class SingleModules {
  private SingleModules() {}

  /** @param address such as /store/phone-store.js */
  public static String at(String address) {
    try {
      return PackShell.modules(Path.of("static"), Path.of("target", "libraries")).from(address);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
