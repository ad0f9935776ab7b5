package throwline.study;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Roll;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;

/** Flies one set-up with what its owner does not know off by so much. Safe for several threads. */
final class PerturbedRun {

    /** Places of the numbers: stall speed, descent angle, elevator, then the roll rates by stick. */
    static final int STALL = 0;

    static final int DESCENT = 1;
    static final int ELEVATOR = 2;
    static final int ROLLS = 3;

    private final Airframe airframe;
    private final AirfoilLibrary airfoils;
    private final SectionAerodynamics sections;
    private final Pack pack;
    private final SetUp setUp;
    private final Optional<Stall> stall;

    PerturbedRun(Airframe airframe, AirfoilLibrary airfoils, SectionAerodynamics sections, Pack pack, SetUp setUp) {
        this(airframe, airfoils, sections, pack, setUp, Optional.empty());
    }

    /** With the stall where nothing is off: the wing stalls there however the tail is set, so that it is not looked for again. */
    PerturbedRun(
            Airframe airframe,
            AirfoilLibrary airfoils,
            SectionAerodynamics sections,
            Pack pack,
            SetUp setUp,
            Optional<Stall> stall) {
        this.airframe = airframe;
        this.airfoils = airfoils;
        this.sections = sections;
        this.pack = pack;
        this.setUp = setUp;
        this.stall = stall;
    }

    /**
     * The numbers.
     *
     * @param errors by what is unknown, in its own unit
     * @return NaN where there is no number
     */
    double[] fly(Map<InputUncertainty, Double> errors) {
        boolean tailAlone =
                errors.size() == 1 && errors.keySet().iterator().next().kind() == InputUncertainty.Kind.TAIL_INCIDENCE;
        if (tailAlone && stall.isPresent()) {
            return elevator(stall.get(), errors.values().iterator().next());
        }
        Airframe frame = airframe;
        Pack weighed = pack;
        SetUp set = setUp;
        double turned = 0;
        Map<String, Double> throwErrors = new HashMap<>();
        AlteredSections altered = new AlteredSections(sections, "", 0, 0, 0);
        for (Map.Entry<InputUncertainty, Double> entry : errors.entrySet()) {
            InputUncertainty unknown = entry.getKey();
            double error = entry.getValue();
            switch (unknown.kind()) {
                case WEIGHT -> weighed = weighed.weighing(weighed.mass() * (1 + error), weighed.balance());
                case BALANCE -> weighed = weighed.weighing(weighed.mass(), weighed.balance() + error);
                case TAIL_INCIDENCE -> turned = error;
                case THROW -> throwErrors.put(unknown.name(), error);
                case AIRFOIL_LIFT ->
                    altered = new AlteredSections(sections, unknown.name(), error, altered.angle(), altered.drag());
                case AIRFOIL_ANGLE ->
                    altered = new AlteredSections(sections, unknown.name(), altered.lift(), error, altered.drag());
                case AIRFOIL_DRAG ->
                    altered = new AlteredSections(sections, unknown.name(), altered.lift(), altered.angle(), error);
            }
        }
        set = moved(set, throwErrors);
        if (!altered.airfoil().isEmpty() || turned != 0) {
            Model model = airframe.model();
            frame = new Airframe(
                    turned == 0 ? model : model.with(model.tail().turned(turned)),
                    airfoils,
                    altered.airfoil().isEmpty() ? sections : altered);
        }
        return numbers(new Flight(frame, set), weighed, throwErrors);
    }

    /** Where the elevator stands at the same speed with the tail turned by an angle, rad; no other number. */
    private double[] elevator(Stall there, double turned) {
        double[] numbers = new double[ROLLS + sticks(airframe.model()).size()];
        Arrays.fill(numbers, Double.NaN);
        Model model = airframe.model();
        Airframe frame = new Airframe(model.with(model.tail().turned(turned)), airfoils, sections);
        numbers[ELEVATOR] = new Flight(frame, setUp)
                .descent(pack, there, there.approachSpeed())
                .steady()
                .map(Attitude::elevator)
                .orElse(Double.NaN);
        return numbers;
    }

    /** A surface that is at neutral stays there: that is what trim is for. */
    private static SetUp moved(SetUp setUp, Map<String, Double> errors) {
        Map<String, Double> moved = new LinkedHashMap<>(setUp.deflections());
        moved.replaceAll((name, angle) -> angle == 0 ? angle : angle + errors.getOrDefault(name, 0.0));
        return new SetUp(setUp.name(), moved, setUp.elevator());
    }

    private double[] numbers(Flight flight, Pack weighed, Map<String, Double> errors) {
        Model model = airframe.model();
        List<Stick.Roll> sticks = sticks(model);
        double[] numbers = new double[ROLLS + sticks.size()];
        Arrays.fill(numbers, Double.NaN);
        Optional<Stall> stall = flight.stall(weighed);
        if (stall.isEmpty()) {
            return numbers;
        }
        numbers[STALL] = stall.get().speed();
        Optional<Attitude> steady = flight.descent(
                        weighed, stall.get(), stall.get().approachSpeed())
                .steady();
        if (steady.isPresent()) {
            numbers[DESCENT] = steady.get().descentAngle();
            numbers[ELEVATOR] = steady.get().elevator();
            for (int i = 0; i < sticks.size(); i++) {
                numbers[ROLLS + i] = flight.roll(moved(sticks.get(i), errors), weighed, steady.get())
                        .map(Roll::rate)
                        .orElse(Double.NaN);
            }
        }
        return numbers;
    }

    private List<Stick.Roll> sticks(Model model) {
        return model.sticks().stream()
                .filter(s -> s instanceof Stick.Roll && s.worksIn(setUp))
                .map(s -> (Stick.Roll) s)
                .toList();
    }

    private static Stick.Roll moved(Stick.Roll stick, Map<String, Double> errors) {
        Map<String, Stick.Throws> moved = new LinkedHashMap<>(stick.throwsBySurface());
        moved.replaceAll((surface, t) -> {
            double error = errors.getOrDefault(surface, 0.0);
            return new Stick.Throws(Math.max(0, t.up() + error), Math.max(0, t.down() + error));
        });
        return new Stick.Roll(stick.name(), moved, stick.in());
    }
}
