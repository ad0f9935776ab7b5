package throwline.validation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import throwline.air.Gravity;
import throwline.flight.Airframe;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.DragItem;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;

/** Reads the quantity that a row of an aircraft case names. */
final class AircraftReading {

    private static final double STEP = Math.toRadians(1);
    private static final double MODEST_SPEED = 10;

    private final Model model;
    private final AirfoilLibrary airfoils;
    private final SectionAerodynamics sections;
    private final double plateDrag;
    private final Map<String, Flight> flights = new HashMap<>();
    private final Map<String, Optional<Stall>> stalls = new HashMap<>();

    /**
     * @param model the aircraft
     * @param airfoils where its airfoils are found
     * @param sections makes section curves
     * @param plateDrag drag of a plate across the stream over its area, for rows with plates
     */
    AircraftReading(Model model, AirfoilLibrary airfoils, SectionAerodynamics sections, double plateDrag) {
        this.model = model;
        this.airfoils = airfoils;
        this.sections = sections;
        this.plateDrag = plateDrag;
    }

    /** The product's answer; NaN where it finds none. */
    double read(CaseRow row) throws UnreadableCase {
        String quantity = row.text("quantity");
        return switch (quantity) {
            case "lift" -> held(row).lift();
            case "drag" -> held(row).drag();
            case "moment" -> held(row).moments().total();
            case "glide ratio" -> held(row).lift() / held(row).drag();
            case "lift slope" ->
                line(row, a -> Math.toDegrees(a.alpha()), Attitude::lift).slope();
            case "zero-lift angle" ->
                line(row, a -> Math.toDegrees(a.alpha()), Attitude::lift).root();
            case "drag rise with lift squared" ->
                line(row, a -> a.lift() * a.lift(), Attitude::drag).slope();
            case "moment slope with lift" ->
                line(row, Attitude::lift, a -> a.moments().total()).slope();
            case "largest lift" -> most(row, Attitude::lift);
            case "least drag" -> -most(row, a -> -a.drag());
            case "largest glide ratio" -> most(row, a -> a.lift() / a.drag());
            case "moment per degree of elevator" ->
                perElevator(row, a -> a.moments().total());
            case "lift per degree of elevator" -> perElevator(row, Attitude::lift);
            case "rolling per degree of aileron" -> rolling(row);
            default -> inFlight(quantity, row);
        };
    }

    private double inFlight(String quantity, CaseRow row) throws UnreadableCase {
        return switch (quantity) {
            case "stall speed" -> stall(row, "set-up").map(Stall::speed).orElse(Double.NaN);
            case "stall speed ratio" ->
                stall(row, "set-up").map(Stall::speed).orElse(Double.NaN)
                        / stall(row, "against").map(Stall::speed).orElse(Double.NaN);
            case "wing lift ratio" ->
                wing(setUp(row, "set-up")).largestLift()
                        / wing(setUp(row, "against")).largestLift();
            case "descent angle" -> Math.toDegrees(descent(row, "set-up", row.number("speed [m/s]")));
            case "descent angle gain" -> Math.toDegrees(approach(row, "set-up") - approach(row, "against"));
            case "drag straight down" -> straightDown(row);
            default -> throw row.wrong("quantity", "case.quantity");
        };
    }

    private WingReading wing(SetUp setUp) {
        double speed = MODEST_SPEED;
        Optional<Stall> stall = stall(setUp, 0);
        return WingReading.of(
                model, airfoils, sections, setUp, stall.map(Stall::speed).orElse(speed));
    }

    private Attitude held(CaseRow row) throws UnreadableCase {
        return held(row, row.angle("angle [deg]"), Math.toRadians(row.number("elevator [deg]", 0)));
    }

    private Attitude held(CaseRow row, double angle, double elevator) throws UnreadableCase {
        return flight(setUp(row, "set-up"), plates(row)).held(pack(), row.number("speed [m/s]"), angle, elevator);
    }

    private LeastSquares line(CaseRow row, ToDoubleFunction<Attitude> x, ToDoubleFunction<Attitude> y)
            throws UnreadableCase {
        List<double[]> points = new ArrayList<>();
        for (Attitude attitude : sweep(row)) {
            points.add(new double[] {x.applyAsDouble(attitude), y.applyAsDouble(attitude)});
        }
        return LeastSquares.through(points);
    }

    private double most(CaseRow row, ToDoubleFunction<Attitude> what) throws UnreadableCase {
        return sweep(row).stream().mapToDouble(what).max().orElse(Double.NaN);
    }

    /** From the row's angle to its other angle, every degree. */
    private List<Attitude> sweep(CaseRow row) throws UnreadableCase {
        double from = row.angle("angle [deg]");
        int steps = (int) Math.round((row.angle("to [deg]") - from) / STEP);
        List<Attitude> sweep = new ArrayList<>();
        for (int k = 0; k <= steps; k++) {
            sweep.add(held(row, from + k * STEP, Math.toRadians(row.number("elevator [deg]", 0))));
        }
        return sweep;
    }

    private double perElevator(CaseRow row, ToDoubleFunction<Attitude> what) throws UnreadableCase {
        double angle = row.angle("angle [deg]");
        double from = row.number("elevator [deg]");
        double to = row.number("elevator to [deg]");
        double change = what.applyAsDouble(held(row, angle, Math.toRadians(to)))
                - what.applyAsDouble(held(row, angle, Math.toRadians(from)));
        return change / (to - from);
    }

    private double rolling(CaseRow row) throws UnreadableCase {
        Stick stick = model.sticks().stream()
                .filter(s -> s.name().equals(row.text("stick")))
                .findFirst()
                .orElseThrow(() -> row.wrong("stick", "case.stick"));
        if (!(stick instanceof Stick.Roll roll)) {
            throw row.wrong("stick", "case.stick");
        }
        double moment = flight(setUp(row, "set-up"), 0)
                .rollingMoment(roll, row.number("speed [m/s]"), row.angle("angle [deg]"));
        return moment / row.number("throw [deg]");
    }

    private Optional<Stall> stall(CaseRow row, String column) throws UnreadableCase {
        return stall(setUp(row, column), plates(row));
    }

    private Optional<Stall> stall(SetUp setUp, double plates) {
        return stalls.computeIfAbsent(
                setUp.name() + plates, key -> flight(setUp, plates).stall(pack()));
    }

    private double approach(CaseRow row, String column) throws UnreadableCase {
        Optional<Stall> stall = stall(row, column);
        return stall.isEmpty() ? Double.NaN : descent(row, column, stall.get().approachSpeed());
    }

    private double descent(CaseRow row, String column, double speed) throws UnreadableCase {
        Optional<Stall> stall = stall(row, column);
        Flight flight = flight(setUp(row, column), plates(row));
        return stall.map(s -> flight.descent(pack(), s, speed))
                .flatMap(Descent::steady)
                .map(Attitude::descentAngle)
                .orElse(Double.NaN);
    }

    /** Drag coefficient without lift, from the steady speed straight down. */
    private double straightDown(CaseRow row) throws UnreadableCase {
        Flight flight = flight(setUp(row, "set-up"), plates(row));
        return stall(row, "set-up")
                .flatMap(s -> flight.noseDownSpeed(pack(), s))
                .map(v -> 2
                        * pack().mass()
                        * Gravity.STANDARD
                        / (flight.airframe().air().density()
                                * v
                                * v
                                * model.wing().area()))
                .orElse(Double.NaN);
    }

    private Pack pack() {
        return model.packs().get(0);
    }

    private static double plates(CaseRow row) throws UnreadableCase {
        return row.number("plates [m2]", 0);
    }

    private SetUp setUp(CaseRow row, String column) throws UnreadableCase {
        return model.setUps().stream()
                .filter(s -> s.name().equals(row.text(column)))
                .findFirst()
                .orElseThrow(() -> row.wrong(column, "case.set-up"));
    }

    private Flight flight(SetUp setUp, double plates) {
        return flights.computeIfAbsent(setUp.name() + plates, key -> {
            List<DragItem> more = plates > 0
                    ? List.of(new DragItem(
                            "plates", plateDrag * plates, model.wing().height()))
                    : List.of();
            return new Flight(new Airframe(model, airfoils, sections, more), setUp);
        });
    }
}
