package provender.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.concurrent.atomic.AtomicLong;

/** A wire to a server that counts what goes through it, both ways, headers and all. */
final class Wire implements AutoCloseable {
  private final ServerSocket near;
  private final int far;
  private final AtomicLong bytes = new AtomicLong();

  Wire(String url) throws IOException {
    this.far = Integer.parseInt(url.substring(url.lastIndexOf(':') + 1));
    this.near = new ServerSocket(0, 200, InetAddress.getLoopbackAddress());
    run(this::accept);
  }

  String url() {
    return "http://127.0.0.1:" + near.getLocalPort();
  }

  long bytes() {
    return bytes.get();
  }

  private void accept() throws IOException {
    while (!near.isClosed()) {
      Socket caller = near.accept();
      Socket server = new Socket(InetAddress.getLoopbackAddress(), far);
      run(() -> pump(caller, server));
      run(() -> pump(server, caller));
    }
  }

  private void pump(Socket from, Socket to) throws IOException {
    try (from; to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      byte[] some = new byte[16_384];
      for (int read = in.read(some); read >= 0; read = in.read(some)) {
        bytes.addAndGet(read);
        out.write(some, 0, read);
      }
    }
  }

  private interface Work {
    void go() throws IOException;
  }

  private static void run(Work work) {
    Thread thread = new Thread(() -> {
      try {
        work.go();
      } catch (IOException hungUp) {
        // One end closed; the other learns of it by the closed socket.
      }
    });
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() throws IOException {
    near.close();
  }
}
