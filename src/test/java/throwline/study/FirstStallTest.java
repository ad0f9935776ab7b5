package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.input.PackedAirfoils;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.MeasuredSections;
import throwline.study.SetUpResult.Manner;

/**
 * Whether a wing drops depends on the stall in front of the ailerons (PRACTICE, methods manual 17.4). That cannot hang on
 * whether the model file has a stick that rolls.
 */
class FirstStallTest {

    private static Model with(List<Surface> surfaces, List<SetUp> setUps, List<Stick> sticks) {
        Model m = Examples.read("orchard");
        Wing w = m.wing();
        return new Model(
                m.name(),
                m.packs().subList(0, 1),
                new Wing(w.height(), w.incidence(), w.dihedral(), w.sections(), surfaces),
                m.tail(),
                m.body(),
                m.wheels(),
                m.propeller(),
                m.field(),
                setUps,
                sticks);
    }

    private static List<Manner> manners(Model model) {
        return Examples.compare(model, new MeasuredSections()).packs().get(0).setUps().stream()
                .map(result -> result.firstStall().manner())
                .toList();
    }

    /** The same wing lets go in the same way, with its sticks in the file or without. */
    @Test
    void theSticksChangeNothing() {
        Model m = Examples.read("orchard");
        List<Surface> surfaces = m.wing().surfaces();
        List<SetUp> setUps = m.setUps();
        Model rolls = with(surfaces, setUps, m.sticks());
        Model none = with(surfaces, setUps, List.of());
        assertThat(Flight.ailerons(none)).isEqualTo(Flight.ailerons(rolls)).containsExactly("ailerons");
        assertThat(manners(none)).isEqualTo(manners(rolls)).contains(Manner.SAGS);
    }

    /** A single surface that no stick moves may be flaps or ailerons, and a wing without any tells nothing. */
    @Test
    void whatIsNotKnownIsNotSaid() {
        Model m = Examples.read("orchard");
        Surface flaps = m.wing().surfaces().get(0);
        SetUp landing = m.setUps().get(2);
        assertThat(manners(with(List.of(flaps), List.of(m.reference(), landing), List.of())))
                .contains(Manner.UNKNOWN)
                .doesNotContain(Manner.SAGS, Manner.MAY_DROP_A_WING);
        assertThat(manners(with(List.of(), List.of(m.reference()), List.of())))
                .doesNotContain(Manner.SAGS, Manner.MAY_DROP_A_WING);
    }

    /**
     * Less than 1.5 degrees more angle left in front of the ailerons than elsewhere is too little (PRACTICE, methods manual
     * 17.4): straight wings about that mark, with travel enough for the wing to stall.
     */
    @Test
    void aDegreeAndAHalf() {
        Model m = Examples.read("orchard");
        Wing w = m.wing();
        int below = 0;
        int above = 0;
        for (double washout : new double[] {0, 0.5, 1.5, 2.5}) {
            List<WingSection> sections = List.of(
                    w.sections().get(0),
                    new WingSection(
                            w.semiSpan(),
                            w.sections().get(0).chord(),
                            w.sections().get(0).airfoil(),
                            Math.toRadians(washout),
                            0));
            Model straight = new Model(
                    m.name(),
                    m.packs().subList(0, 1),
                    new Wing(w.height(), w.incidence(), w.dihedral(), sections, w.surfaces()),
                    agile(m.tail()),
                    m.body(),
                    m.wheels(),
                    m.propeller(),
                    m.field(),
                    m.setUps(),
                    m.sticks());
            double reserve = new Flight(
                            new Airframe(straight, new PackedAirfoils(), new MeasuredSections()), straight.reference())
                    .stall(straight.packs().get(0))
                    .orElseThrow()
                    .aileronReserve();
            boolean little = reserve < Math.toRadians(1.5);
            assertThat(manners(straight).get(0)).isEqualTo(little ? Manner.MAY_DROP_A_WING : Manner.SAGS);
            below += reserve > Math.toRadians(0.75) && little ? 1 : 0;
            above += reserve < Math.toRadians(3) && !little ? 1 : 0;
        }
        assertThat(below).isPositive();
        assertThat(above).isPositive();
    }

    private static Tail agile(Tail t) {
        Elevator e = t.elevator();
        return new Tail(
                t.span(),
                t.chord(),
                t.arm(),
                t.height(),
                t.incidence(),
                t.position(),
                t.airfoil(),
                new Elevator(e.chordFraction(), 1.2, e.travelDown(), e.hinge()));
    }
}
