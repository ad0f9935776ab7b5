package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A picture is painted anew exactly where it differs. */
class PaintedShotsTest {

    private final PaintedShots painted = new PaintedShots();

    private static HandView.Shot shot(String title, int pixel) {
        BufferedImage image = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
        image.setRGB(1, 1, pixel);
        return new HandView.Shot(title, List.of("caption"), image, 1);
    }

    @Test
    void what_has_not_changed_is_the_same_object() {
        List<HandView.Shot> first = painted.kept(List.of(shot("a", 1), shot("b", 2)));
        List<HandView.Shot> second = painted.kept(List.of(shot("a", 1), shot("b", 3), shot("c", 4)));
        assertThat(second.get(0)).isSameAs(first.get(0));
        assertThat(second.get(1)).isNotSameAs(first.get(1));
        assertThat(second.get(1).image().getRGB(1, 1) & 0xFFFFFF).isEqualTo(3);
        assertThat(second).hasSize(3);
        assertThat(painted.kept(List.of(shot("other", 1))).get(0)).isNotSameAs(first.get(0));
    }

    /** A colour's lightness is mirrored on a dark ground; the two ends are white and the ground. */
    @Test
    void light_and_dark_are_turned_over() {
        assertThat(Ink.turnedOver(0xFFFFFF)).isEqualTo(0x2B2B2B);
        assertThat(Ink.turnedOver(0x000000)).isEqualTo(0xFFFFFF);
    }
}
