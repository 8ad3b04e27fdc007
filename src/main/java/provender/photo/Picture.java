package provender.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** One picture made anew: read within narrow limits, drawn, and written as a JPEG that holds nothing but pixels. */
final class Picture {
  /** What a phone sends has at most 1600 on a side; more than this is not decoded at all. */
  static final int MOST_SIDE_SENT = 2048;

  static final int MOST_SIDE_KEPT = 1600;

  /** A picture that builds up in steps has about ten scans; thousands of them would keep the decoder busy for minutes. */
  static final int MOST_SCANS = 32;

  private static final float QUALITY = 0.82f;

  private Picture() {}

  static byte[] anew(byte[] sent) throws NotAPicture {
    if (!beginsAsJpeg(sent) || scans(sent) > MOST_SCANS) {
      throw new NotAPicture("a JPEG picture");
    }
    try {
      return written(withinKept(read(sent)));
    } catch (IOException | RuntimeException unreadable) {
      // The decoder answers broken pictures with faults of many kinds; to whoever sent one they all mean the same.
      throw new NotAPicture("a JPEG picture that can be read whole");
    }
  }

  private static boolean beginsAsJpeg(byte[] sent) {
    return sent.length > 3 && (sent[0] & 0xff) == 0xff && (sent[1] & 0xff) == 0xd8 && (sent[2] & 0xff) == 0xff;
  }

  /** Within the compressed pixels 0xff is always followed by 0 or a restart, so the mark of a scan cannot be mistaken. */
  private static int scans(byte[] sent) {
    int scans = 0;
    for (int i = 1; i < sent.length; i++) {
      if ((sent[i - 1] & 0xff) == 0xff && (sent[i] & 0xff) == 0xda) {
        scans++;
      }
    }
    return scans;
  }

  private static BufferedImage read(byte[] sent) throws IOException, NotAPicture {
    ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
    try (MemoryCacheImageInputStream input = new MemoryCacheImageInputStream(new ByteArrayInputStream(sent))) {
      reader.setInput(input, true, true);
      if (Math.max(reader.getWidth(0), reader.getHeight(0)) > MOST_SIDE_SENT) {
        throw new NotAPicture("a picture of at most " + MOST_SIDE_SENT + " pixels on a side");
      }
      return reader.read(0);
    } finally {
      reader.dispose();
    }
  }

  private static BufferedImage withinKept(BufferedImage image) {
    double scale = Math.min(1, (double) MOST_SIDE_KEPT / Math.max(image.getWidth(), image.getHeight()));
    int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
    int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
    BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = drawn.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(image, 0, 0, width, height, null);
    pen.dispose();
    return drawn;
  }

  private static byte[] written(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream output = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(output);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
