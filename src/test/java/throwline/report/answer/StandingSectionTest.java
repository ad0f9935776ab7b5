package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.linkage.ServoBlowBack.Hold;
import throwline.model.Elevator;
import throwline.model.Hinge;
import throwline.report.Page;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Text;
import throwline.study.BlowBackResult;
import throwline.study.BlowBackResult.Point;
import throwline.study.BlowBackResult.Row;
import throwline.study.EdgeThrow;
import throwline.study.SetUpResult.Side;
import throwline.units.Display;

/** Wording and layout of where the surfaces stand, from fixed results: every number is invented. */
class StandingSectionTest {

    private static final double DEG = Math.PI / 180;
    private static final Elevator HINGED = new Elevator(0.4, 0.4, 0.4, Hinge.OPEN);
    private static final Elevator PIVOTED = new Elevator(1, 0.2, 0.2, Hinge.TAPED, 0.3);

    private static Row row(
            String surface, String stick, Side side, double told, double bench, double gap, Point... air) {
        return new Row(surface, stick, side, told * DEG, 0.07, bench * DEG, gap, air.length > 0, List.of(air));
    }

    private static Point point(double speed, double angle, double perhaps, Hold hold) {
        return new Point(
                speed, angle * DEG, new EdgeThrow(0.07).distance(angle * DEG), Optional.of(perhaps * DEG), hold);
    }

    private static final BlowBackResult ALL = new BlowBackResult(
            11.5,
            15.8,
            true,
            List.of(
                    row(
                            "flaps",
                            "",
                            Side.BOTH,
                            55,
                            51,
                            0.85,
                            point(11.5, 48.4, 47.1, Hold.HELD),
                            point(15.8, 31.2, 22.5, Hold.OVERPOWERED)),
                    row("ailerons", "low rates", Side.LEFT, 10, 10, 1, point(11.5, 9.8, 9.8, Hold.HELD)),
                    row(
                            "ailerons",
                            "low rates",
                            Side.RIGHT,
                            -12,
                            -12,
                            1,
                            point(11.5, -11.4, -11.2, Hold.HELD),
                            point(15.8, -10.9, -10.3, Hold.HELD)),
                    row("elevator", "full up", Side.BOTH, -14, -14, 0.85)));

    private static final BlowBackResult PLAIN =
            new BlowBackResult(11.5, 24.8, false, List.of(row("ailerons", "rates", Side.RIGHT, -12, -12, 1)));

    private static String text(BlowBackResult answer, Elevator elevator, int width) {
        Page page = Page.of(width, true, false, Display.metric());
        Document document = new Document(
                Text.none(),
                List.of(),
                List.of(Section.of(Text.name("Stands"), new StandingSection(answer).blocks(elevator))));
        return Answers.text(document, page);
    }

    @Test
    void lines() {
        Golden.check("fly-standing-80.txt", text(ALL, HINGED, 80) + "\n" + text(PLAIN, PIVOTED, 80));
    }

    @Test
    void nothingMoved() {
        assertThat(text(BlowBackResult.none(), HINGED, 80)).isBlank();
    }

    /** Of the sides and sticks the one that falls furthest short is shown, of the set-up alone all. */
    @Test
    void whatIsShown() {
        assertThat(ALL.telling()).extracting(Row::side).containsExactly(Side.BOTH, Side.RIGHT, Side.BOTH);
    }

    @Test
    void noLineIsLongerThanThePage() {
        for (int width : new int[] {80, 100}) {
            assertThat(text(ALL, HINGED, width).lines()).allMatch(line -> line.length() <= width);
        }
    }
}
