package throwline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.SpanGrid;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.section.SectionCurve;
import throwline.sizing.CandidateFlight;
import throwline.units.Deflection;
import throwline.units.Dimension;
import throwline.units.Quantity;
import throwline.words.Message;

/** Notes beside the numbers of a set-up: on elevator, tail, servos and sticks. */
final class SetUpNotes {

    /** Less angle than this left before the tail stalls is worth a word (PRACTICE, methods manual 7.6). */
    private static final double SAFE_TAIL = CandidateFlight.SAFE_TAIL;

    /** A stick that falls short by less than this is none, rad: the elevator's own band is 2 degrees. */
    private static final double STICK_SHORT = Math.toRadians(2);

    /** Angle past the stall over which a loss of lift is sudden, and the share of lift that makes it so (methods manual 6.5). */
    private static final double SUDDEN_WITHIN = Math.toRadians(2);

    private static final double SUDDEN = 0.2;

    /** Lift that comes back further below the stall than this is late, rad: half of it is the scatter of the runs. */
    private static final double LATE = Math.toRadians(1);

    /** Below this Reynolds number a stall that nobody measured may be sudden (methods manual 6.5). */
    private static final double MAY_BE_SUDDEN = 150e3;

    /** Lowest Reynolds number of any measurement in the library but a few. */
    private static final double LOWEST_MEASURED = 60e3;

    /** Less of the wing than this below it is not worth a word. */
    private static final double SMALL_PART = 0.1;

    private final Model model;
    private final SetUp setUp;
    private final Bands bands;

    SetUpNotes(Model model, SetUp setUp, Bands bands) {
        this.model = model;
        this.setUp = setUp;
        this.bands = bands;
    }

    /** Whether the pull sticks bring the elevator where the slowest flight and the landing take it. */
    List<Message> sticks(Stall stall, Descent approach, FieldAnswer field) {
        Optional<Attitude> trimmed = approach.steady();
        Optional<Stick.Pull> most = model.sticks().stream()
                .filter(s -> s.worksIn(setUp))
                .flatMap(s -> s instanceof Stick.Pull pull && pull.elevator() < 0 ? Stream.of(pull) : Stream.empty())
                .min(Comparator.comparingDouble(Stick.Pull::elevator));
        if (trimmed.isEmpty() || most.isEmpty()) {
            return List.of();
        }
        double stop = -model.tail().elevator().travelUp();
        double reach = Math.max(stop, trimmed.get().elevator() + most.get().elevator());
        double needed = field.elevator()
                .map(e -> Math.min(e.roundOut(), e.touchdown()))
                .map(e -> Math.min(e, stall.attitude().elevator()))
                .orElse(stall.attitude().elevator());
        return needed >= reach - STICK_SHORT
                ? List.of()
                : List.of(Message.of("note.stick-short", most.get().name()));
    }

    /** Where the elevator's travel ends the way to a dive: how fast and how steep it gets. */
    List<Message> elevatorEnd(Flight flight, Pack pack, Stall stall, HeadlineNumbers numbers) {
        if (numbers.number(FlightQuantity.NOSE_DOWN_SPEED) instanceof Headline.Known) {
            return List.of();
        }
        return flight.elevatorEnd(pack, stall).stream()
                .map(a -> Message.of(
                        "note.elevator-ends-dive",
                        new Quantity(a.speed(), Dimension.SPEED),
                        new Quantity(a.descentAngle(), Dimension.ANGLE)))
                .toList();
    }

    /** How the airfoil stalls where the wing stalls first: all at once, and how late lift comes back, or unmeasured. */
    List<Message> stallManner(Flight flight, Stall stall) {
        LiftingLineSolution wing = stall.attitude().wing();
        SectionCurve curve = wing.problem().curves().get(stall.firstStrip());
        if (stall.elevatorLimited()) {
            return List.of();
        }
        OptionalDouble recovery = curve.recoveryAngle();
        if (recovery.isEmpty()) {
            return reynolds(flight, stall.speed(), wing.grid().chord(stall.firstStrip())) < MAY_BE_SUDDEN
                    ? List.of(Message.of("note.stall-unmeasured"))
                    : List.of();
        }
        List<Message> notes = new ArrayList<>();
        double lost = 1 - curve.lift(curve.stallAngle() + SUDDEN_WITHIN) / curve.maxLift();
        if (lost > SUDDEN) {
            notes.add(Message.of("note.stall-sudden", whole(lost)));
        }
        double late = curve.stallAngle() - recovery.getAsDouble();
        if (late > LATE) {
            notes.add(Message.of("note.stall-late", new Quantity(late, Dimension.ANGLE)));
        }
        return notes;
    }

    /** Parts of the model that fly below every measurement. */
    List<Message> belowMeasured(Flight flight, Stall stall) {
        List<Message> notes = new ArrayList<>();
        SpanGrid grid = flight.airframe().strips().grid();
        double below = 0;
        for (int i = 0; i < grid.size(); i++) {
            if (reynolds(flight, stall.speed(), grid.chord(i)) < LOWEST_MEASURED) {
                below += grid.chord(i) * grid.width(i) / grid.area();
            }
        }
        if (below > SMALL_PART) {
            notes.add(Message.of("note.wing-below-measured", whole(below)));
        }
        if (reynolds(flight, stall.approachSpeed(), model.tail().chord()) < LOWEST_MEASURED) {
            notes.add(Message.of("note.tail-below-measured"));
        }
        return notes;
    }

    /** A share in whole hundredths: no more of it is known. */
    private static Quantity whole(double share) {
        return new Quantity(Math.rint(100 * share) / 100, Dimension.FRACTION);
    }

    private static double reynolds(Flight flight, double speed, double chord) {
        return flight.airframe().reynoldsPerMetre(speed) * chord;
    }

    /** What steady flight in the set-up has to be said of. */
    List<Message> inFlight(Stall stall, Descent approach, ServoAnswer servos) {
        List<Message> notes = new ArrayList<>();
        if (stall.elevatorLimited()) {
            notes.add(Message.of("note.elevator-before-wing"));
        }
        approach.steady().ifPresent(a -> {
            if (a.tailMargin() < SAFE_TAIL) {
                notes.add(
                        Message.of("note.tail-near-stall", new Quantity(Math.max(0, a.tailMargin()), Dimension.ANGLE)));
            }
            if (a.tailInWake()) {
                notes.add(Message.of("note.tail-in-wake"));
            }
            if (setUp.elevator() != 0) {
                notes.add(Message.of(
                        "note.elevator-still-missing",
                        new Deflection(setUp.elevator()),
                        new Deflection(a.elevator() - setUp.elevator())));
            }
        });
        notes.addAll(new Servos(model, setUp, bands).notes(servos));
        return notes;
    }
}
