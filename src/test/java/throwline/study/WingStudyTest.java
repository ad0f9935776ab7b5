package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.words.Message;
import throwline.words.Words;

/**
 * The bare wing of a model against lifting-line theory: values COMPUTED by two independent methods (the table
 * wing-cases.csv of the lifting line's tests), here through the model's own description of a wing.
 */
class WingStudyTest {

    private static final List<Double> FIVE_DEGREES = List.of(Math.toRadians(5));

    private static WingSweep sweep(Model model, WingQuestion question) {
        return new WingStudy(InventedModel.theory()).sweep(model, InventedModel.airfoils(), question);
    }

    @Test
    void taperedWingHasTheLiftSlopeOfTheory() {
        Model model = InventedModel.with(InventedModel.tapered(2.2, 8, 0.4, 0, List.of()));
        WingSweep sweep = sweep(
                model, WingQuestion.of(InventedModel.CLEAN, FIVE_DEGREES, 12).asPlainLine());
        assertThat(sweep.points().get(0).lift() / Math.toRadians(5)).isCloseTo(4.979227, withPercentage(0.2));
        assertThat(sweep.area()).isCloseTo(2.2 * 2.2 / 8, withPercentage(1e-6));
        assertThat(sweep.span()).isEqualTo(2.2);
        assertThat(sweep.meanChord()).isCloseTo(model.wing().meanAerodynamicChord(), withPercentage(0.05));
    }

    @Test
    void washoutMovesZeroLiftAsInTheory() {
        Model model = InventedModel.with(InventedModel.tapered(1.6, 8, 0.4, Math.toRadians(3), List.of()));
        WingSweep sweep = sweep(
                model, WingQuestion.of(InventedModel.CLEAN, FIVE_DEGREES, 12).asPlainLine());
        assertThat(sweep.points().get(0).lift()).isCloseTo(0.3237634, withPercentage(0.2));
    }

    @Test
    void rollDampingIsThatOfTheoryWhicheverWayTheRateIsGiven() {
        Model model = InventedModel.with(InventedModel.tapered(1.6, 8, 0.4, 0, List.of()));
        WingQuestion plain =
                WingQuestion.of(InventedModel.CLEAN, FIVE_DEGREES, 12).asPlainLine();
        double byHelix = sweep(model, plain.withTipHelix(0.06)).points().get(0).rolling();
        double byRate = sweep(model, plain.withRollRate(0.06 * 12 / 0.8, 0.8))
                .points()
                .get(0)
                .rolling();
        assertThat(byHelix / 0.06).isCloseTo(-0.5272998, withPercentage(0.2));
        assertThat(byRate).isCloseTo(byHelix, offset(1e-12));
    }

    @Test
    void partSpanFlapsLiftAsInTheory() {
        Model model = InventedModel.with(
                InventedModel.tapered(2, 10, 0.6, 0, List.of(InventedModel.surface("flaps", 0.1, 0.55, 0.5))));
        SetUp flaps = new SetUp("flaps", Map.of("flaps", Math.toRadians(10)), 0);
        WingSweep sweep = sweep(model, WingQuestion.of(flaps, List.of(0.0), 12).asPlainLine());
        WingSweep.Point point = sweep.points().get(0);
        assertThat(point.lift()).isCloseTo(0.2305663, withPercentage(0.5));
        assertThat(point.inducedDrag()).isCloseTo(0.003898105, withPercentage(1));
        assertThat(point.drag()).isEqualTo(point.inducedDrag());
        double sum = point.strips().stream()
                .mapToDouble(s -> s.lift() * s.chord() * s.width())
                .sum();
        assertThat(sum / sweep.area()).isCloseTo(point.lift(), offset(1e-12));
        assertThat(point.strips())
                .allSatisfy(s -> assertThat(s.deflection())
                        .isEqualTo(Math.abs(s.at()) > 0.1 && Math.abs(s.at()) < 0.55 ? Math.toRadians(10) : 0));
    }

    @Test
    void correctionAndGroundAct() {
        Model model = InventedModel.with(InventedModel.tapered(2, 6, 1, 0, List.of()));
        WingQuestion question = WingQuestion.of(InventedModel.CLEAN, FIVE_DEGREES, 12);
        double plain = sweep(model, question.asPlainLine()).points().get(0).lift();
        WingSweep.Point corrected = sweep(model, question).points().get(0);
        WingSweep.Point low = sweep(model, question.aboveGround(0.2)).points().get(0);
        assertThat(corrected.lift()).isBetween(0.9 * plain, 0.99 * plain);
        assertThat(low.converged()).isTrue();
        assertThat(low.inducedDrag() / (low.lift() * low.lift()))
                .isLessThan(0.7 * corrected.inducedDrag() / (corrected.lift() * corrected.lift()));
    }

    @Test
    void deflectionBeyondTheTravelIsCutAndSaid() {
        Model model = InventedModel.with(
                InventedModel.tapered(2, 6, 1, 0, List.of(InventedModel.surface("flaps", 0.1, 0.55, 0.2))));
        SetUp wide = new SetUp("wide", Map.of("flaps", 0.5), 0);
        SetUp stop = new SetUp("stop", Map.of("flaps", 0.2), 0);
        WingSweep cut = sweep(model, WingQuestion.of(wide, FIVE_DEGREES, 12));
        WingSweep atStop = sweep(model, WingQuestion.of(stop, FIVE_DEGREES, 12));
        assertThat(cut.points()).isEqualTo(atStop.points());
        assertThat(atStop.warnings()).isEmpty();
        assertThat(cut.warnings()).extracting(Message::code).containsExactly("note.wing.cut-at-travel");
        Words words = Words.load();
        assertThat(words.has("note.wing.cut-at-travel")).isTrue();
        assertThat(words.has("note.wing.not-converged")).isTrue();
    }

    @Test
    void anglesIncludeBothEnds() {
        List<Double> angles = WingQuestion.angles(Math.toRadians(-4), Math.toRadians(16), Math.toRadians(0.1));
        assertThat(angles).hasSize(201);
        assertThat(angles.get(200)).isCloseTo(Math.toRadians(16), offset(1e-12));
        assertThat(WingQuestion.angles(0, 1, 0.3)).hasSize(4);
        assertThat(WingQuestion.angles(1, 0, -0.5)).containsExactly(1.0, 0.5, 0.0);
    }
}
