package provender.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Pictures drawn for tests. */
public final class Snapshot {
  private Snapshot() {}

  /** Left half dark, right half light. */
  public static byte[] jpeg(int width, int height) {
    return written(width, height, "jpeg");
  }

  public static byte[] png(int width, int height) {
    return written(width, height, "png");
  }

  /** With a place and a camera in it, as phones write them: an APP1 segment right after the first two bytes. */
  public static byte[] withExif(byte[] jpeg, String camera) {
    byte[] said = ("Exif\0\0" + camera).getBytes(StandardCharsets.ISO_8859_1);
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(jpeg, 0, 2);
    all.write(0xff);
    all.write(0xe1);
    all.write((said.length + 2) >> 8);
    all.write(said.length + 2);
    all.writeBytes(said);
    all.write(jpeg, 2, jpeg.length - 2);
    return all.toByteArray();
  }

  private static byte[] written(int width, int height, String kind) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.LIGHT_GRAY);
    pen.fillRect(width / 2, 0, width, height);
    pen.dispose();
    try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      ImageIO.write(image, kind, bytes);
      return bytes.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
