package throwline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.flight.Airframe;
import throwline.flight.Flight;
import throwline.input.ModelFile;
import throwline.input.NamedAirfoils;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;

/** What the owner of a model does not know, in its bands. */
class LikelyBandsTest {

    private static final AirfoilLibrary AIRFOILS = new NamedAirfoils(new PackedAirfoils(), Path.of("examples"));
    private static final MeasuredSections SECTIONS = new MeasuredSections();
    private static final int AIRBRAKE = 3;

    @TempDir
    private Path folder = Path.of("");

    /** The utility model of the examples, its airfoil given by name or by words. */
    private Model orchard(String airfoil) throws IOException {
        String text = Files.readString(Path.of("examples", "orchard.yaml")).replace("clark-y-b", airfoil);
        Path file = Files.writeString(folder.resolve("orchard.yaml"), text);
        return ((ReadModel.Project) ModelFile.read(file, AIRFOILS)).model();
    }

    private static PerturbedRun trial(Model model) {
        return new PerturbedRun(
                new Airframe(model, AIRFOILS, SECTIONS),
                AIRFOILS,
                SECTIONS,
                model.packs().get(0),
                model.setUps().get(AIRBRAKE));
    }

    private static List<InputUncertainty> unknowns(Model model) {
        return new InputUncertainties(model, AIRFOILS).in(model.setUps().get(AIRBRAKE));
    }

    private static FlyResult fly(Model model) {
        return new FlyStudy(SECTIONS, Bands.load())
                .fly(model, AIRFOILS, model.packs().get(0), model.setUps().get(AIRBRAKE), FlyQuestion.open());
    }

    /** One per cent of weight is half a per cent of stall speed (V goes with the root of W; Reynolds number apart). */
    @Test
    void weightMovesTheStallByItsRoot() throws IOException {
        Model model = orchard("clark-y-b");
        List<InputUncertainty> unknowns = unknowns(model);
        LikelyBands bands = LikelyBands.of(trial(model), unknowns, trial(model).fly(Map.of()));
        double stall = trial(model).fly(Map.of())[PerturbedRun.STALL];
        assertThat(unknowns.get(0).kind()).isEqualTo(InputUncertainty.Kind.WEIGHT);
        assertThat(bands.answer(PerturbedRun.STALL, 0, 1) / stall).isCloseTo(0.005, within(0.001));
        assertThat(bands.answer(PerturbedRun.STALL, 0, -1)).isNegative();
    }

    /** The middle of the trials is the answer itself. */
    @Test
    void withNothingOffTheTrialIsTheResult() throws IOException {
        Model model = orchard("clark-y-b");
        double[] trial = trial(model).fly(Map.of());
        SetUpResult result = fly(model).glance();
        assertThat(LikelyBands.middle(result)).containsExactly(trial, within(1e-12));
        assertThat(trial).hasSizeGreaterThan(PerturbedRun.ROLLS).doesNotContain(Double.NaN);
    }

    /** What trials one by one say together is what flying all errors at once gives, to a tenth of their spread. */
    @Test
    void errorsAddUp() throws IOException {
        Model model = orchard("flat bottom 12 %");
        List<InputUncertainty> unknowns = unknowns(model);
        PerturbedRun trial = trial(model);
        LikelyBands bands = LikelyBands.of(trial, unknowns, trial.fly(Map.of()));
        double[] middle = trial.fly(Map.of());
        RandomGenerator random = new Well19937c(3);
        double[] square = new double[middle.length];
        double[] missed = new double[middle.length];
        for (int draw = 0; draw < 12; draw++) {
            double[] sum = new double[middle.length];
            Map<InputUncertainty, Double> errors = new HashMap<>();
            for (int k = 0; k < unknowns.size(); k++) {
                double times = random.nextGaussian() / 1.645;
                errors.put(unknowns.get(k), times * unknowns.get(k).size());
                for (int i = 0; i < sum.length; i++) {
                    sum[i] += bands.answer(i, k, times);
                }
            }
            double[] together = trial.fly(errors);
            for (int i = 0; i < sum.length; i++) {
                square[i] += Math.pow(together[i] - middle[i], 2);
                missed[i] += Math.pow(together[i] - middle[i] - sum[i], 2);
            }
        }
        assertThat(Math.sqrt(missed[PerturbedRun.STALL] / square[PerturbedRun.STALL]))
                .isLessThan(0.1);
        assertThat(Math.sqrt(missed[PerturbedRun.ELEVATOR] / square[PerturbedRun.ELEVATOR]))
                .isLessThan(0.25);
        assertThat(Math.sqrt(missed[PerturbedRun.DESCENT] / square[PerturbedRun.DESCENT]))
                .isLessThan(0.25);
    }

    @Test
    void anAirfoilInWordsMattersMost() throws IOException {
        FlyResult known = fly(orchard("clark-y-b"));
        FlyResult said = fly(orchard("flat bottom 12 %"));
        assertThat(said.matters()).hasSize(3);
        assertThat(said.matters().get(0).what()).isEqualTo("tail");
        assertThat(said.matters().get(1).what()).isEqualTo("airfoil");
        assertThat(known.matters()).extracting(FlyResult.Sensitivity::what).doesNotContain("airfoil");
        assertThat(width(said)).isGreaterThan(1.5 * width(known));
    }

    /** The band of the stall speed over the speed. */
    private static double width(FlyResult result) {
        Headline.Known stall = (Headline.Known) result.glance().stallSpeed();
        return (stall.high() - stall.low()) / stall.value();
    }

    /** The same answer every time: errors are drawn from a fixed seed. */
    @Test
    void theSameTwice() throws IOException {
        Model model = orchard("flat bottom 12 %");
        assertThat(fly(model).glance().stallSpeed())
                .isEqualTo(fly(model).glance().stallSpeed());
    }

    /** Comparing and flying say the same of a model whose airfoil is given by words. */
    @Test
    void comparisonHasTheSameBands() throws IOException {
        Model model = orchard("flat bottom 12 %");
        SetUpResult compared = new ComparisonStudy(SECTIONS, Bands.load())
                .compare(model, AIRFOILS, model.packs())
                .packs()
                .get(0)
                .setUps()
                .get(AIRBRAKE);
        Headline.Known one = (Headline.Known) compared.stallSpeed();
        Headline.Known other = (Headline.Known) fly(model).glance().stallSpeed();
        assertThat(one.low()).isCloseTo(other.low(), within(0.02));
        assertThat(one.high()).isCloseTo(other.high(), within(0.02));
    }

    /**
     * Where the file does not give the tail's incidence, the elevator's place is not known by more than the model's own error:
     * the elevator makes good what the tail is turned, a flap of a fifth to a half of a chord with about half of it (thin
     * section theory, H. Glauert, R&M 1095), so that 2 degrees are about 3 to 6 degrees of elevator; the speed at the stall and
     * the way down are the wing's.
     */
    @Test
    void anUnknownTailAngleWidensWhereTheElevatorStands() throws IOException {
        String text = Files.readString(Path.of("examples", "orchard.yaml"));
        String given = text.replaceFirst("(?m)^tail:$", "tail:\n  incidence: 0 deg");
        assertThat(given).isNotEqualTo(text);
        SetUpResult open = landingFlap(text);
        SetUpResult known = landingFlap(given);
        Headline.Known wide = (Headline.Known) open.number(FlightQuantity.ELEVATOR);
        Headline.Known narrow = (Headline.Known) known.number(FlightQuantity.ELEVATOR);
        assertThat(wide.value()).isEqualTo(narrow.value());
        double half = (narrow.high() - narrow.low()) / 2;
        double added = Math.sqrt(Math.pow((wide.high() - wide.low()) / 2, 2) - half * half);
        assertThat(Math.toDegrees(added)).isBetween(2.5, 6.5);
        assertThat(open.stallSpeed()).isEqualTo(known.stallSpeed());
        assertThat(open.descentAngle()).isEqualTo(known.descentAngle());
        assertThat(open.rollRates()).isEqualTo(known.rollRates());
        assertThat(open.number(FlightQuantity.ELEVATOR_CHANGE)).isEqualTo(known.number(FlightQuantity.ELEVATOR_CHANGE));
    }

    /** What is left out where only the elevator is asked for does not move it: the stall with the tail turned is the same. */
    @Test
    void theStallHardlyKnowsTheTail() throws IOException {
        Model model = orchard("clark-y-b");
        Map<InputUncertainty, Double> turned = Map.of(
                new InputUncertainty(InputUncertainty.Kind.TAIL_INCIDENCE, "", Math.toRadians(2)), Math.toRadians(2));
        double[] level = trial(model).fly(Map.of());
        double[] searched = trial(model).fly(turned);
        assertThat(searched[PerturbedRun.STALL] / level[PerturbedRun.STALL]).isCloseTo(1, within(0.005));
        PerturbedRun straight = new PerturbedRun(
                new Airframe(model, AIRFOILS, SECTIONS),
                AIRFOILS,
                SECTIONS,
                model.packs().get(0),
                model.setUps().get(AIRBRAKE),
                new Flight(
                                new Airframe(model, AIRFOILS, SECTIONS),
                                model.setUps().get(AIRBRAKE))
                        .stall(model.packs().get(0)));
        double moved = searched[PerturbedRun.ELEVATOR] - level[PerturbedRun.ELEVATOR];
        assertThat(straight.fly(turned)[PerturbedRun.ELEVATOR] - level[PerturbedRun.ELEVATOR])
                .isCloseTo(moved, within(0.05 * Math.abs(moved)));
    }

    private SetUpResult landingFlap(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("angle.yaml"), text);
        Model model = ((ReadModel.Project) ModelFile.read(file, AIRFOILS)).model();
        return new ComparisonStudy(SECTIONS, Bands.load())
                .compare(model, AIRFOILS, model.packs().subList(0, 1))
                .packs()
                .get(0)
                .setUps()
                .get(2);
    }
}
