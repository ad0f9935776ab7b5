package throwline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import throwline.flight.Descent;
import throwline.flight.Flight;
import throwline.flight.ServoLimit;
import throwline.flight.ServoLoad;
import throwline.flight.Stall;
import throwline.flight.Standing;
import throwline.linkage.ControlRun;
import throwline.linkage.ControlRun.Reach;
import throwline.linkage.ServoBlowBack;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.study.ServoAnswer.LoadPoint;
import throwline.study.ServoAnswer.Position;
import throwline.study.ServoAnswer.SurfaceLoad;
import throwline.study.ServoAnswer.Yield;
import throwline.units.Deflection;
import throwline.words.Message;

/** Turns the loads of the servos into what a person reads. */
final class Servos {

    /** Speeds at which loads are looked at, over the stall speed; the first is the speed to come in at. */
    private static final double[] SPEEDS = {Stall.APPROACH, 2, 2.8};

    /** The last of them: a limit beyond it is said to be none. */
    static final double FASTEST = SPEEDS[SPEEDS.length - 1];

    /** A surface that is pushed back by more than both of these is worth a word (common practice, no source). */
    private static final double YIELD_SHARE = 0.1;

    /** Share of its torque that a servo should be asked for (PRACTICE, methods manual 17.5). */
    private static final double ALL_IT_SHOULD = 0.5;

    private static final double LEAST_YIELD = Math.toRadians(1);

    /** So much of that, told from the load alone, and it is looked at closely. */
    private static final double MAY = 0.6;

    private final Model model;
    private final SetUp setUp;
    private final Bands bands;
    private final Map<String, ControlRun> runs;

    Servos(Model model, SetUp setUp, Bands bands) {
        this.model = model;
        this.setUp = setUp;
        this.bands = bands;
        runs = ControlRun.of(model);
    }

    /** The speed at which the first servo has no more than twice the torque that it needs. */
    Optional<ServoLimit> limit(Flight flight, Pack pack, Stall stall) {
        return anyRated() ? flight.servoLimit(pack, stall) : Optional.empty();
    }

    /** The same as a headline number. */
    Headline speedLimit(Optional<ServoLimit> limit, Stall stall) {
        return suffices(limit, stall)
                ? new Headline.Unknown("why.servo-suffices")
                : limit.<Headline>map(l -> limit(l.speed())).orElseGet(() -> new Headline.Unknown(why()));
    }

    private static boolean suffices(Optional<ServoLimit> limit, Stall stall) {
        return limit.isPresent() && limit.get().speed() > FASTEST * stall.speed();
    }

    /**
     * The answer.
     *
     * @param approach the descent at the speed to come in at
     * @param limit of the speed
     * @param change the elevator's expected change against the reference set-up
     */
    ServoAnswer answer(
            Flight flight, Pack pack, Stall stall, Descent approach, Optional<ServoLimit> limit, Headline change) {
        String by = suffices(limit, stall) ? "" : limit.map(ServoLimit::surface).orElse("");
        double comingIn = stall.approachSpeed();
        List<ServoLoad> first = flight.servoLoads(pack, stall, comingIn, approach.steady());
        return new ServoAnswer(
                by,
                loads(flight, pack, stall, first),
                positions(),
                yields(flight, pack, stall, approach, first),
                mix(change));
    }

    /** Where no stall was found there are positions all the same. */
    ServoAnswer withoutStall() {
        return new ServoAnswer("", List.of(), positions(), List.of(), Optional.empty());
    }

    private Optional<Position> mix(Headline change) {
        return model.isReference(setUp) || !(change instanceof Headline.Known known)
                ? Optional.empty()
                : known.startingMix().map(new Positions(model)::mix);
    }

    private List<Position> positions() {
        return new Positions(model).in(setUp);
    }

    private boolean moved(Servo servo) {
        return setUp.deflection(servo.surface()) != 0;
    }

    private boolean anyRated() {
        return model.servos().stream().anyMatch(s -> moved(s) && s.torque().isPresent());
    }

    private String why() {
        if (setUp.isClean()) {
            return "why.nothing-moved";
        }
        if (!anyRated()) {
            return "why.no-servo";
        }
        boolean locked = positions().stream().anyMatch(p -> p.reach() == Reach.LOCKED);
        return locked ? "why.servo-locked" : "why.not-found";
    }

    /** The torque may be more than said, not less; it grows with the square of the speed. */
    private Headline limit(double speed) {
        Headline.Known one = bands.around("servoTorque", 1);
        return new Headline.Known(speed, speed / Math.sqrt(one.high()), speed, one.basis());
    }

    private Headline torque(LoadPoint point) {
        return point.torque()
                .<Headline>map(t -> {
                    Headline.Known band = bands.around("servoTorque", t);
                    return new Headline.Known(t, t, band.high(), band.basis());
                })
                .orElseGet(() -> new Headline.Unknown("why.servo-locked"));
    }

    private List<SurfaceLoad> loads(Flight flight, Pack pack, Stall stall, List<ServoLoad> comingIn) {
        Map<String, List<LoadPoint>> bySurface = new LinkedHashMap<>();
        for (double ratio : SPEEDS) {
            double speed = ratio * stall.speed();
            List<ServoLoad> there = ratio == SPEEDS[0]
                    ? comingIn
                    : flight.servoLoads(
                            pack,
                            stall,
                            speed,
                            flight.descent(pack, stall, speed).steady());
            for (ServoLoad load : there) {
                bySurface
                        .computeIfAbsent(load.surface(), s -> new ArrayList<>())
                        .add(new LoadPoint(
                                speed,
                                load.stick(),
                                load.deflection(),
                                Math.abs(load.hinge()),
                                load.servo().stream().boxed().findFirst()));
            }
        }
        List<SurfaceLoad> loads = new ArrayList<>();
        double approach = stall.approachSpeed();
        bySurface.forEach((surface, points) -> loads.add(load(surface, points, approach)));
        return loads;
    }

    /**
     * Surfaces that stand well short of where they are programmed. Who may be among them is told from the loads, the hinge
     * moment in proportion to the angle, which leaves out up to a quarter of what is lost; only then all is worked out.
     */
    private List<Yield> yields(Flight flight, Pack pack, Stall stall, Descent comingIn, List<ServoLoad> loads) {
        Set<String> sticks =
                loads.stream().filter(this::mayYield).map(ServoLoad::stick).collect(Collectors.toSet());
        if (sticks.isEmpty()) {
            return List.of();
        }
        double speed = stall.approachSpeed();
        Map<String, Yield> worst = new LinkedHashMap<>();
        for (Standing s : flight.standing(pack, stall, speed, comingIn.steady(), 1, sticks)) {
            s.inAir()
                    .filter(rest -> fallsShort(s.bench(), rest.angle(), 1))
                    .map(rest -> new Yield(s.surface(), s.stick(), s.bench(), rest.angle()))
                    .ifPresent(yield -> worst.merge(s.surface(), yield, (a, b) -> b.lost() > a.lost() ? b : a));
        }
        return List.copyOf(worst.values());
    }

    private boolean mayYield(ServoLoad load) {
        double told = Objects.requireNonNull(runs.get(load.surface())).benchAngle(load.deflection());
        return told != 0
                && ServoBlowBack.of(
                                Objects.requireNonNull(runs.get(load.surface())),
                                model.servo(load.surface()),
                                model.throwChord(load.surface()))
                        .map(held -> held.at(told, angle -> load.hinge() * angle / load.deflection()))
                        .filter(rest -> fallsShort(told, rest.angle(), MAY))
                        .isPresent();
    }

    private static boolean fallsShort(double told, double angle, double share) {
        double back = (told - angle) * Math.signum(told);
        return back > share * LEAST_YIELD && back > share * YIELD_SHARE * Math.abs(told);
    }

    private SurfaceLoad load(String surface, List<LoadPoint> points, double approach) {
        Servo servo = model.servo(surface);
        OptionalDouble rating = servo.torque();
        Headline comingIn = points.stream()
                .filter(p -> p.speed() == approach)
                .map(this::torque)
                .findFirst()
                .orElseGet(() -> new Headline.Unknown("why.not-found"));
        return new SurfaceLoad(
                surface,
                rating.stream().boxed().findFirst(),
                servo.arm().isEmpty() || servo.horn().isEmpty(),
                comingIn,
                rating.stream().boxed().findFirst().flatMap(r -> halfRatingAt(points, r / 2)),
                points);
    }

    /** Between two speeds and past the last one the load goes with the square of the speed. */
    private static Optional<Double> halfRatingAt(List<LoadPoint> points, double torque) {
        Optional<LoadPoint> near = points.stream()
                .filter(p -> p.torque().orElse(0.0) > 0)
                .reduce((a, b) -> a.torque().orElse(0.0) >= torque ? a : b);
        return near.map(p -> p.speed() * Math.sqrt(torque / p.torque().orElse(1.0)));
    }

    /** What the person must know before anything is programmed. */
    List<Message> notes(ServoAnswer answer) {
        List<Message> notes = new ArrayList<>();
        for (Position p : answer.positions()) {
            String code =
                    switch (p.reach()) {
                        case LOCKED -> p.stick().isEmpty() ? "note.servo.locked" : "note.servo.locked-stick";
                        case BEYOND_SWING -> p.stick().isEmpty() ? "note.servo.swing" : "note.servo.swing-stick";
                        case FREE, SLACKENING -> "";
                    };
            if (!code.isEmpty()) {
                notes.add(Message.of(code, p.surface(), new Deflection(p.angle()), p.stick()));
            }
        }
        for (SurfaceLoad load : answer.loads()) {
            if (load.rating().isPresent() && load.comingIn() instanceof Headline.Known torque) {
                double share = torque.value() / load.rating().get();
                if (share > ALL_IT_SHOULD) {
                    notes.add(Message.of(share > 1 ? "note.servo.overpowered" : "note.servo.hard", load.surface()));
                }
            }
        }
        for (Yield yield : answer.yields()) {
            notes.add(Message.of(
                    yield.stick().isEmpty() ? "note.servo.yields" : "note.servo.yields-stick",
                    yield.surface(),
                    new Deflection(yield.told()),
                    new Deflection(yield.angle()),
                    yield.stick()));
        }
        return notes.stream().distinct().toList();
    }
}
