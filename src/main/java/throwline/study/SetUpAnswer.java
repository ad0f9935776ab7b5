package throwline.study;

import static throwline.study.FlightQuantity.APPROACH_GLIDE_RATIO;
import static throwline.study.FlightQuantity.APPROACH_SPEED;
import static throwline.study.FlightQuantity.BEST_GLIDE_RATIO;
import static throwline.study.FlightQuantity.DESCENT_ANGLE;
import static throwline.study.FlightQuantity.ELEVATOR;
import static throwline.study.FlightQuantity.ELEVATOR_CHANGE;
import static throwline.study.FlightQuantity.NOSE_DOWN_SPEED;
import static throwline.study.FlightQuantity.ROLL_RATE;
import static throwline.study.FlightQuantity.SINK_RATE;
import static throwline.study.FlightQuantity.STALL_SPEED;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import throwline.flight.Attitude;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.GroundHeights;
import throwline.flight.Roll;
import throwline.flight.ServoLimit;
import throwline.flight.Stall;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.SpanGrid;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.study.HeadlineNumbers.RollRate;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.LoadStation;
import throwline.study.SetUpResult.Manner;
import throwline.study.SetUpResult.Side;
import throwline.study.SetUpResult.SpeedPoint;
import throwline.words.Message;

/** Turns what one set-up does in flight into the numbers, bands and notes that a person reads. */
final class SetUpAnswer {

    /** The sweep of speeds: from this over the stall speed up to that, each rung faster than the last by this ratio. */
    private static final double SLOWEST = 1.02;

    private static final double FASTEST = 2.8;
    private static final double RUNG = 1.09;

    /** Less angle than this left in front of the ailerons, and a wing may drop (PRACTICE, methods manual 17.4). */
    private static final double SAFE_RESERVE = Math.toRadians(1.5);

    private final Model model;
    private final SetUp setUp;
    private final Bands bands;

    SetUpAnswer(Model model, SetUp setUp, Bands bands) {
        this.model = model;
        this.setUp = setUp;
        this.bands = bands;
    }

    /** No stall was found, so nothing else is known. */
    SetUpResult withoutStall() {
        return new SetUpResult(
                setUp,
                HeadlineNumbers.none(new Headline.Unknown("why.no-stall")),
                new FirstStall(Side.BOTH, 0, "", Manner.NOT_REACHED),
                List.of(),
                List.of(),
                new Servos(model, setUp, bands).withoutStall(),
                FieldAnswer.none(),
                List.of(),
                List.of(Message.of("note.no-stall")));
    }

    /** What it does in steady flight, and from there on to servos, landings and gusts. */
    SetUpResult of(
            Flight flight,
            GroundHeights ladder,
            Pack pack,
            Stall stall,
            Descent approach,
            Optional<Descent> reference) {
        PitchBalance balance = PitchBalance.of(flight, pack, stall, approach);
        List<SpeedPoint> sweep = sweep(flight, pack, stall);
        HeadlineNumbers inFlight = inFlight(flight, pack, stall, approach, reference, balance, sweep);
        Servos servos = new Servos(model, setUp, bands);
        Optional<ServoLimit> limit = servos.limit(flight, pack, stall);
        ServoAnswer servo = servos.answer(flight, pack, stall, approach, limit, inFlight.number(ELEVATOR_CHANGE));
        FieldAnswers fields = new FieldAnswers(ladder, model.field(), setUp, bands);
        FieldAnswer field = fields.of(flight, pack, stall, approach);
        SetUpNotes notes = new SetUpNotes(model, setUp, bands);
        PoweredAnswer powered = new PoweredAnswer(setUp, bands, ladder);
        Map<FlightQuantity, Headline> running = powered.numbers(flight, pack, stall, approach);
        List<OneSided> oneSided = approach.steady()
                .map(attitude -> new OneSidedAnswer(model, setUp, bands).all(flight, attitude))
                .orElse(List.of());
        return new SetUpResult(
                setUp,
                inFlight.with(Map.of(FlightQuantity.FLAP_SPEED_LIMIT, servos.speedLimit(limit, stall)))
                        .with(approach.steady()
                                .map(attitude -> fields.numbers(field, attitude))
                                .orElse(Map.of()))
                        .with(running),
                firstStall(flight, stall),
                sweep,
                approach.steady().map(a -> load(a.wing())).orElse(List.of()),
                servo,
                field,
                oneSided,
                powered.seen(),
                Stream.of(
                                balance.notes(),
                                notes.inFlight(stall, approach, servo),
                                notes.elevatorEnd(flight, pack, stall, inFlight),
                                notes.stallManner(flight, stall),
                                notes.belowMeasured(flight, stall),
                                fields.notes(field),
                                powered.notes(running),
                                OneSidedAnswer.notes(oneSided),
                                notes.sticks(stall, approach, field))
                        .flatMap(List::stream)
                        .toList());
    }

    /** What it does in steady flight; numbers that take longer are still being worked out. */
    SetUpResult steady(Flight flight, Pack pack, Stall stall, Descent approach, Optional<Descent> reference) {
        PitchBalance balance = PitchBalance.of(flight, pack, stall, approach);
        List<SpeedPoint> sweep = sweep(flight, pack, stall);
        Map<FlightQuantity, Headline> later = new EnumMap<>(FlightQuantity.class);
        for (FlightQuantity quantity : FlightQuantity.values()) {
            if (quantity.part() != FlightQuantity.Part.AIR) {
                later.put(quantity, new Headline.Unknown(SetUpResult.WORKING));
            }
        }
        ServoAnswer servos = new Servos(model, setUp, bands).withoutStall();
        return new SetUpResult(
                setUp,
                inFlight(flight, pack, stall, approach, reference, balance, sweep)
                        .with(later),
                firstStall(flight, stall),
                sweep,
                approach.steady().map(a -> load(a.wing())).orElse(List.of()),
                servos,
                FieldAnswer.none(),
                List.of(),
                Stream.of(balance.notes(), new SetUpNotes(model, setUp, bands).inFlight(stall, approach, servos))
                        .flatMap(List::stream)
                        .toList());
    }

    /** Numbers of steady flight alone; the others stand for what no descent answers. */
    HeadlineNumbers inFlight(Flight flight, Pack pack, Stall stall, Descent approach, Optional<Descent> reference) {
        PitchBalance balance = PitchBalance.of(flight, pack, stall, approach);
        return inFlight(flight, pack, stall, approach, reference, balance, sweep(flight, pack, stall));
    }

    private HeadlineNumbers inFlight(
            Flight flight,
            Pack pack,
            Stall stall,
            Descent approach,
            Optional<Descent> reference,
            PitchBalance balance,
            List<SpeedPoint> sweep) {
        double speed = stall.approachSpeed();
        Optional<Attitude> steady = approach.steady();
        Headline.Unknown why = steady.isPresent() ? new Headline.Unknown("why.not-found") : balance.why(approach);
        Map<FlightQuantity, Headline> numbers = new EnumMap<>(FlightQuantity.class);
        numbers.put(STALL_SPEED, around(STALL_SPEED, stall.speed(), stall.plateauSpeed(), stall.onsetSpeed()));
        numbers.put(
                APPROACH_SPEED,
                around(
                        APPROACH_SPEED,
                        speed,
                        Stall.APPROACH * stall.plateauSpeed(),
                        Stall.APPROACH * stall.onsetSpeed()));
        steady.ifPresent(a -> {
            numbers.putAll(ofDescent(speed, around(DESCENT_ANGLE, a.descentAngle())));
            Headline change = change(a, reference);
            numbers.put(ELEVATOR, elevator(a.elevator(), change));
            numbers.put(ELEVATOR_CHANGE, change);
        });
        numbers.put(BEST_GLIDE_RATIO, bestGlide(sweep));
        numbers.put(
                NOSE_DOWN_SPEED,
                flight.noseDownSpeed(pack, stall)
                        .<Headline>map(v -> around(NOSE_DOWN_SPEED, v))
                        .orElseGet(() -> new Headline.Unknown("why.nose-down")));
        Map<FlightQuantity, Headline> all =
                new EnumMap<>(HeadlineNumbers.none(why).byQuantity());
        all.putAll(numbers);
        return new HeadlineNumbers(all, rolls(flight, pack, approach, why));
    }

    /** A value with the band of its quantity. */
    private Headline.Known around(FlightQuantity quantity, double value) {
        return around(quantity, value, value, value);
    }

    private Headline.Known around(FlightQuantity quantity, double value, double low, double high) {
        return bands.around(quantity.band(setUp.isClean()), value, low, high);
    }

    /** Numbers that follow from the angle of the descent and the approach speed, m/s, with their bands. */
    static Map<FlightQuantity, Headline> ofDescent(double speed, Headline.Known angle) {
        return Map.of(DESCENT_ANGLE, angle, SINK_RATE, sinkRate(speed, angle), APPROACH_GLIDE_RATIO, glideRatio(angle));
    }

    /** Way forward over way down: the cotangent of the path; none where the path may be level. */
    private static Headline glideRatio(Headline.Known angle) {
        return angle.low() > 0
                ? new Headline.Known(
                        1 / Math.tan(angle.value()),
                        1 / Math.tan(Math.min(Math.PI / 2, angle.high())),
                        1 / Math.tan(angle.low()),
                        angle.basis(),
                        angle.shared())
                : new Headline.Unknown("why.not-found");
    }

    /**
     * The elevator of a set-up is that of the reference and the change to it: nobody knows it better than the change. With
     * bands that are no narrower than those of the change, place and change cannot contradict each other (methods manual 16.1).
     */
    private Headline elevator(double place, Headline change) {
        double half = change instanceof Headline.Known known ? known.value() - known.low() : 0;
        return around(ELEVATOR, place, place - half, place + half);
    }

    private Headline change(Attitude attitude, Optional<Descent> reference) {
        if (model.isReference(setUp)) {
            return new Headline.Known(0, 0, 0, Headline.Basis.ASSUMED);
        }
        Optional<Attitude> there = reference.flatMap(Descent::steady);
        if (there.isPresent()) {
            return around(ELEVATOR_CHANGE, attitude.elevator() - there.get().elevator());
        }
        boolean slow =
                reference.map(d -> d.outcome() == Descent.Outcome.TOO_SLOW).orElse(false);
        return new Headline.Unknown(slow ? "why.reference-too-slow" : "why.reference-unknown");
    }

    private static Headline.Known sinkRate(double speed, Headline.Known angle) {
        return new Headline.Known(
                speed * Math.sin(angle.value()),
                speed * Math.sin(Math.max(-Math.PI / 2, angle.low())),
                speed * Math.sin(Math.min(Math.PI / 2, angle.high())),
                angle.basis(),
                angle.shared());
    }

    /** Why there is no steady descent. */
    static Headline.Unknown why(Descent descent) {
        return new Headline.Unknown(
                switch (descent.outcome()) {
                    case TOO_SLOW -> "why.too-slow";
                    case TOO_FAST -> "why.too-much-drag";
                    case ELEVATOR_SHORT -> "why.elevator-short";
                    case NOT_FOUND, STEADY -> "why.not-found";
                });
    }

    /** Steady descents from just above the stall up, at the rungs of a ladder of speeds that packs and set-ups share. */
    private List<SpeedPoint> sweep(Flight flight, Pack pack, Stall stall) {
        List<Double> speeds = new ArrayList<>(List.of(SLOWEST * stall.speed()));
        int first = (int) Math.ceil(Math.log(SLOWEST * stall.speed()) / Math.log(RUNG) + 0.25);
        for (int k = first; Math.pow(RUNG, k) < FASTEST * stall.speed(); k++) {
            speeds.add(Math.pow(RUNG, k));
        }
        return flight.descents(pack, stall, speeds).stream()
                .flatMap(descent -> descent.steady().stream())
                .map(SetUpAnswer::point)
                .toList();
    }

    private static SpeedPoint point(Attitude a) {
        return new SpeedPoint(
                a.speed(), a.descentAngle(), a.speed() * Math.sin(a.descentAngle()), a.lift(), a.drag(), a.elevator());
    }

    /** The flattest point of the sweep; its neighbours differ by a few per cent in speed and far less in angle. */
    private Headline bestGlide(List<SpeedPoint> sweep) {
        return sweep.stream().mapToDouble(p -> p.lift() / p.drag()).max().stream()
                .<Headline>mapToObj(best -> around(BEST_GLIDE_RATIO, best))
                .findFirst()
                .orElseGet(() -> new Headline.Unknown("why.not-found"));
    }

    private List<RollRate> rolls(Flight flight, Pack pack, Descent approach, Headline.Unknown why) {
        List<RollRate> rolls = new ArrayList<>();
        for (Stick stick : model.sticks()) {
            if (stick instanceof Stick.Roll roll && roll.worksIn(setUp)) {
                Optional<Roll> steady = approach.steady().flatMap(a -> flight.roll(roll, pack, a));
                Headline headline = steady.isPresent()
                        ? around(ROLL_RATE, steady.get().rate())
                        : approach.steady().isPresent() ? new Headline.Unknown("why.no-roll") : why;
                rolls.add(
                        new RollRate(roll.name(), headline, flight.rolling(roll).atItsStop()));
            }
        }
        return rolls;
    }

    private FirstStall firstStall(Flight flight, Stall stall) {
        if (stall.elevatorLimited()) {
            return new FirstStall(Side.BOTH, 0, "", Manner.NOT_REACHED);
        }
        SpanGrid grid = flight.airframe().strips().grid();
        double share = Math.abs(grid.control(stall.firstStrip())) / (grid.span() / 2);
        String surface = flight.airframe()
                .strips()
                .surface(stall.firstStrip())
                .map(Surface::name)
                .orElse("");
        return new FirstStall(Side.BOTH, share, surface, manner(stall));
    }

    private static Manner manner(Stall stall) {
        if (stall.aileronReserve() == Double.POSITIVE_INFINITY) {
            return Manner.UNKNOWN;
        }
        return stall.aileronReserve() < SAFE_RESERVE ? Manner.MAY_DROP_A_WING : Manner.SAGS;
    }

    private static List<LoadStation> load(LiftingLineSolution wing) {
        List<LoadStation> stations = new ArrayList<>();
        SpanGrid grid = wing.grid();
        for (int i = 0; i < grid.size(); i++) {
            stations.add(new LoadStation(
                    grid.control(i),
                    grid.chord(i),
                    wing.lift(i),
                    wing.problem().curves().get(i).maxLift()));
        }
        return stations;
    }
}
