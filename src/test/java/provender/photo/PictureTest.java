package provender.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PictureTest {
  @Test
  void nothing_but_pixels_is_left_of_what_was_sent() throws Exception {
    byte[] sent = Snapshot.withExif(Snapshot.jpeg(300, 200), "a camera 53.0N 8.8E");
    byte[] kept = Picture.anew(sent);
    assertThat(new String(sent, StandardCharsets.ISO_8859_1)).contains("53.0N");
    assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("53.0N", "Exif");

    BufferedImage image = ImageIO.read(new ByteArrayInputStream(kept));
    assertThat(image.getWidth()).isEqualTo(300);
    assertThat(image.getRGB(20, 100) & 0xff).isLessThan(40);
    assertThat(image.getRGB(280, 100) & 0xff).isGreaterThan(150);
  }

  @Test
  void a_larger_one_is_brought_to_the_side_that_is_kept() throws Exception {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(Picture.anew(Snapshot.jpeg(2000, 1000))));
    assertThat(image.getWidth()).isEqualTo(Picture.MOST_SIDE_KEPT);
    assertThat(image.getHeight()).isEqualTo(Picture.MOST_SIDE_KEPT / 2);
  }

  @Test
  void what_is_no_jpeg_by_its_content_is_refused_whatever_it_is_called() {
    for (byte[] sent : new byte[][] {
      new byte[0], text("<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>"), text("GIF89a"), Snapshot.png(10, 10), text("%PDF-1.7")
    }) {
      assertThatThrownBy(() -> Picture.anew(sent)).isInstanceOf(NotAPicture.class).hasMessageContaining("JPEG");
    }
  }

  @Test
  void more_pixels_than_a_phone_sends_are_refused_before_any_is_decoded() {
    byte[] bomb = Snapshot.jpeg(64, 64);
    int frame = startOfFrame(bomb);
    bomb[frame + 5] = bomb[frame + 7] = (byte) 0xff;
    assertThatThrownBy(() -> Picture.anew(bomb)).isInstanceOf(NotAPicture.class).hasMessageContaining("2048");
  }

  @Test
  void a_picture_of_thousands_of_scans_is_refused() {
    byte[] jpeg = Snapshot.jpeg(64, 64);
    byte[] many = Arrays.copyOf(jpeg, jpeg.length + 100);
    for (int i = 0; i < 50; i++) {
      many[jpeg.length + 2 * i] = (byte) 0xff;
      many[jpeg.length + 2 * i + 1] = (byte) 0xda;
    }
    assertThatThrownBy(() -> Picture.anew(many)).isInstanceOf(NotAPicture.class);
  }

  @Test
  void a_broken_one_is_refused_or_kept_whole_but_never_breaks_the_server() throws Exception {
    byte[] jpeg = Snapshot.jpeg(120, 90);
    Random random = new Random(7);
    int refused = 0;
    for (int i = 0; i < 500; i++) {
      byte[] spoilt = random.nextBoolean() ? Arrays.copyOf(jpeg, random.nextInt(jpeg.length)) : jpeg.clone();
      for (int j = 0; j < 8 && spoilt.length > 4; j++) {
        spoilt[3 + random.nextInt(spoilt.length - 3)] = (byte) random.nextInt();
      }
      try {
        assertThat(ImageIO.read(new ByteArrayInputStream(Picture.anew(spoilt)))).isNotNull();
      } catch (NotAPicture expected) {
        refused++;
      }
    }
    assertThat(refused).isPositive();
  }

  private static byte[] text(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static int startOfFrame(byte[] jpeg) {
    for (int i = 0; i < jpeg.length - 1; i++) {
      if ((jpeg[i] & 0xff) == 0xff && (jpeg[i + 1] & 0xff) == 0xc0) {
        return i;
      }
    }
    throw new IllegalStateException("no frame");
  }
}
