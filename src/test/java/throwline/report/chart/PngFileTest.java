package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngFileTest {

    @Test
    void the_reader_of_the_java_library_sees_every_pixel() throws IOException {
        BufferedImage image = new BufferedImage(37, 23, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(5);
        for (int y = 0; y < 23; y++) {
            for (int x = 0; x < 37; x++) {
                image.setRGB(x, y, random.nextInt() | 0xFF000000);
            }
        }
        for (int most : new int[] {1, 7, 23, 100}) {
            byte[] file = PngFile.of(37, 23, most, (from, lines) -> image.getSubimage(0, from, 37, lines));
            BufferedImage read = ImageIO.read(new ByteArrayInputStream(file));
            assertThat(read.getRGB(0, 0, 37, 23, null, 0, 37)).isEqualTo(image.getRGB(0, 0, 37, 23, null, 0, 37));
        }
    }
}
