package throwline.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelPlacerTest {

    private static final Rectangle2D PAGE = new Rectangle2D.Double(0, 0, 400, 300);

    @Test
    void the_first_label_stands_to_the_right_of_its_point() {
        Rectangle2D label = new LabelPlacer(PAGE).place(200, 150, 60, 14);
        assertThat(label.getMinX()).isGreaterThan(200);
        assertThat(label.getCenterY()).isEqualTo(150);
    }

    @Test
    void six_labels_for_one_point_stay_apart_and_on_the_page() {
        LabelPlacer placer = new LabelPlacer(PAGE);
        List<Rectangle2D> placed = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Rectangle2D label = placer.place(390, 150, 90, 15);
            assertThat(PAGE.contains(label)).isTrue();
            assertThat(placed).noneMatch(label::intersects);
            placed.add(label);
        }
    }

    @Test
    void a_label_keeps_clear_of_a_curve_where_it_can() {
        LabelPlacer placer = new LabelPlacer(PAGE);
        placer.inked(200, 150, 400, 150);
        Rectangle2D label = placer.place(200, 150, 60, 14);
        assertThat(label.contains(label.getCenterX(), 150)).isFalse();
    }
}
