package throwline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.MeasuredSections;

/**
 * The same wing described with more words, a section on the straight line between two others or a surface that never
 * moves, flies the same: a fact of geometry. What is left is the error of the strips, which end at other places then.
 */
class SameWingTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();

    private static Model example(String name) {
        return ((ReadModel.Project) ModelFile.read(Path.of("examples", name + ".yaml"), AIRFOILS)).model();
    }

    static Stream<String> names() {
        return Stream.of("orchard", "ridgeline", "saltmarsh");
    }

    private record Answer(double stall, double descent, double elevator) {}

    private static List<Answer> answers(Model model) {
        Airframe airframe = new Airframe(model, AIRFOILS, new MeasuredSections());
        Pack pack = model.packs().get(0);
        List<Answer> answers = new ArrayList<>();
        for (SetUp setUp : model.setUps()) {
            Flight flight = new Flight(airframe, setUp);
            Stall stall = flight.stall(pack).orElseThrow();
            Attitude attitude =
                    flight.descent(pack, stall, stall.approachSpeed()).steady().orElseThrow();
            answers.add(new Answer(stall.speed(), attitude.lift() / attitude.drag(), attitude.elevator()));
        }
        return answers;
    }

    private static void same(Model model, Wing other) {
        List<Answer> before = answers(model);
        List<Answer> after = answers(new Model(
                model.name(),
                model.packs(),
                other,
                model.tail(),
                model.body(),
                model.wheels(),
                model.propeller(),
                model.field(),
                model.setUps(),
                model.sticks()));
        for (int i = 0; i < before.size(); i++) {
            String where = model.setUps().get(i).name();
            assertThat(after.get(i).stall).as(where).isCloseTo(before.get(i).stall, withPercentage(0.1));
            assertThat(after.get(i).descent).as(where).isCloseTo(before.get(i).descent, withPercentage(0.25));
            assertThat(after.get(i).elevator)
                    .as(where)
                    .isCloseTo(before.get(i).elevator, within(Math.toRadians(0.025)));
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void aSectionOnTheStraightLineChangesNothing(String name) {
        Model model = example(name);
        Wing wing = model.wing();
        for (double share : new double[] {0.3, 0.5, 0.7}) {
            List<WingSection> sections = new ArrayList<>(wing.sections());
            sections.add(1, between(sections.get(0), sections.get(1), share));
            same(model, new Wing(wing.height(), wing.incidence(), wing.dihedral(), sections, wing.surfaces()));
        }
    }

    private static WingSection between(WingSection a, WingSection b, double share) {
        return new WingSection(
                a.at() + share * (b.at() - a.at()),
                a.chord() + share * (b.chord() - a.chord()),
                a.airfoil(),
                a.washout() + share * (b.washout() - a.washout()),
                a.setBack() + share * (b.setBack() - a.setBack()));
    }

    @ParameterizedTest
    @MethodSource("names")
    void aSurfaceThatNeverMovesChangesNothing(String name) {
        Model model = example(name);
        Wing wing = model.wing();
        double outermost =
                wing.surfaces().stream().mapToDouble(Surface::to).max().orElseThrow();
        double innermost =
                wing.surfaces().stream().mapToDouble(Surface::from).min().orElseThrow();
        double tip = wing.sections().get(wing.sections().size() - 1).at();
        for (double[] ends : new double[][] {{0, innermost}, {outermost, tip}}) {
            double free = ends[1] - ends[0];
            List<Surface> surfaces = new ArrayList<>(wing.surfaces());
            surfaces.add(new Surface("spare", ends[0] + 0.2 * free, ends[1] - 0.3 * free, 0.2, 0.2, 0.2, Hinge.TAPED));
            same(model, new Wing(wing.height(), wing.incidence(), wing.dihedral(), wing.sections(), surfaces));
        }
    }
}
