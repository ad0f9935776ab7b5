package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.Wing;
import throwline.words.Message;

/** Limits are common practice, no source; the example models lie inside them. */
class ModelReviewTest {

    private final Model usual = UsualModel.make();

    @Test
    void aUsualModelGivesNoNotes() {
        assertThat(ModelReview.of(usual)).isEmpty();
    }

    @Test
    void balanceFarBackIsSeen() {
        Model model = with(usual, List.of(new Pack("small", 3, 0.118)));
        assertThat(codes(model)).containsExactly("note.unusual.balance");
    }

    @Test
    void spanOfTheTailTypedTenTimesTooSmallIsSeen() {
        Tail t = usual.tail();
        Tail small = new Tail(
                t.span() / 10, t.chord(), t.arm(), t.height(), t.incidence(), t.position(), t.airfoil(), t.elevator());
        assertThat(codes(with(usual, small))).containsExactly("note.unusual.tail-volume");
    }

    @Test
    void armMeasuredFromTheBalancePointIsSeen() {
        Tail t = usual.tail();
        Tail near =
                new Tail(t.span(), t.chord(), 0.5, t.height(), t.incidence(), t.position(), t.airfoil(), t.elevator());
        assertThat(codes(with(usual, near))).contains("note.unusual.tail-arm", "note.unusual.tail-volume");
    }

    @Test
    void weightTypedInTheWrongUnitIsSeen() {
        assertThat(codes(with(usual, List.of(new Pack("small", 0.305, 0.08))))).containsExactly("note.unusual.loading");
    }

    @Test
    void aileronsRaisedFurtherThanHalfTheirTravelAreSeen() {
        List<SetUp> setUps = new ArrayList<>(usual.setUps());
        setUps.add(new SetUp("brake", Map.of("flaps", Math.toRadians(50), "ailerons", -Math.toRadians(20)), 0));
        Model model = new Model(
                usual.name(),
                usual.packs(),
                usual.wing(),
                usual.tail(),
                usual.body(),
                usual.wheels(),
                usual.propeller(),
                usual.field(),
                setUps,
                usual.sticks());
        assertThat(codes(model)).contains("note.unusual.raised");
    }

    @Test
    void sticksThatWorkAgainstCustomAreSeen() {
        Stick roll = new Stick.Roll(
                "odd", Map.of("ailerons", new Stick.Throws(Math.toRadians(8), Math.toRadians(12))), List.of());
        Stick pull = new Stick.Pull("up", Map.of("flaps", -Math.toRadians(5)), -Math.toRadians(10), List.of());
        Model model = new Model(
                usual.name(),
                usual.packs(),
                usual.wing(),
                usual.tail(),
                usual.body(),
                usual.wheels(),
                usual.propeller(),
                usual.field(),
                usual.setUps(),
                List.of(roll, pull));
        assertThat(codes(model)).contains("note.unusual.more-down", "note.unusual.pull-up");
    }

    @Test
    void surfaceWhoseEndWasMeasuredFromItsBeginningIsSeen() {
        Wing w = usual.wing();
        Surface f = w.surfaces().get(0);
        Surface narrow = new Surface(
                f.name(), f.from(), f.from() + 0.05, f.chordFraction(), f.travelUp(), f.travelDown(), f.hinge());
        Wing wing = new Wing(
                w.height(),
                w.incidence(),
                w.dihedral(),
                w.sections(),
                List.of(narrow, w.surfaces().get(1)));
        Model model = new Model(
                usual.name(),
                usual.packs(),
                wing,
                usual.tail(),
                usual.body(),
                usual.wheels(),
                usual.propeller(),
                usual.field(),
                usual.setUps(),
                usual.sticks());
        assertThat(codes(model)).containsExactly("note.unusual.surface-width");
    }

    private static List<String> codes(Model model) {
        return ModelReview.of(model).stream().map(Message::code).toList();
    }

    private static Model with(Model m, List<Pack> packs) {
        return new Model(
                m.name(),
                packs,
                m.wing(),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks());
    }

    private static Model with(Model m, Tail tail) {
        return new Model(
                m.name(),
                m.packs(),
                m.wing(),
                tail,
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                m.setUps(),
                m.sticks());
    }
}
