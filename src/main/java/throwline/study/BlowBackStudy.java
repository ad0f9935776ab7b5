package throwline.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import throwline.flight.Attitude;
import throwline.flight.Flight;
import throwline.flight.Stall;
import throwline.flight.Standing;
import throwline.linkage.ServoBlowBack;
import throwline.model.Elevator;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.section.HingeGap;
import throwline.study.BlowBackResult.Point;
import throwline.study.BlowBackResult.Row;
import throwline.study.SetUpResult.Side;

/** "Where do the surfaces really stand?" */
final class BlowBackStudy {

    /** Speeds that are looked at over the stall speed, as for the loads of the servos with more between. */
    private static final double[] SPEEDS = {Stall.APPROACH, 1.6, 2, 2.4, Servos.FASTEST};

    /** A speed limit is worth a column of its own from this far above the speed to come in at. */
    private static final double APART = 1.02;

    /** Two sides stand alike to this, rad: no one sees less. */
    private static final double ALIKE = Math.toRadians(0.1);

    private final Flight flight;
    private final Model model;
    private final Pack pack;
    private final Stall stall;
    private final Bands bands;
    private final boolean setUpMovesNothing;

    BlowBackStudy(Flight flight, SetUp setUp, Pack pack, Stall stall, Bands bands) {
        this.flight = flight;
        this.pack = pack;
        this.stall = stall;
        this.bands = bands;
        model = flight.airframe().model();
        setUpMovesNothing = model.wing().surfaces().stream().allMatch(surface -> setUp.deflection(surface.name()) == 0);
    }

    /**
     * The answer.
     *
     * @param limit highest speed that the servos allow for the surfaces that the set-up moves
     */
    BlowBackResult answer(Headline limit) {
        double comeIn = SPEEDS[0] * stall.speed();
        double fastest = Servos.FASTEST * stall.speed();
        boolean limited = limit instanceof Headline.Known known && known.value() > APART * comeIn;
        double fast = limited ? ((Headline.Known) limit).value() : fastest;
        Map<Key, List<Seen>> seen = new LinkedHashMap<>();
        DoubleStream.concat(DoubleStream.of(SPEEDS).map(ratio -> ratio * stall.speed()), DoubleStream.of(fast))
                .distinct()
                .sorted()
                .forEach(speed -> look(speed, speed == comeIn || speed == fast, seen));
        List<Row> rows = new ArrayList<>();
        seen.forEach((key, points) -> rows.add(row(key, points)));
        return new BlowBackResult(comeIn, fast, limited, merged(rows));
    }

    private record Key(String surface, String stick, int side) {}

    private record Seen(double speed, Standing standing, Optional<Standing> pushedHarder) {}

    /** All of it at the two speeds that are read; between them what the curves need. */
    private void look(double speed, boolean read, Map<Key, List<Seen>> seen) {
        Optional<Attitude> descent = flight.descent(pack, stall, speed).steady();
        Set<String> sticks = model.sticks().stream()
                .filter(stick -> read || setUpMovesNothing || movesElevatorOnly(stick))
                .map(Stick::name)
                .collect(Collectors.toSet());
        double most = bands.around("servoTorque", 1).high();
        List<Standing> all = flight.standing(pack, stall, speed, descent, 1, sticks);
        List<Standing> harder = read ? flight.standing(pack, stall, speed, descent, most, sticks) : List.of();
        for (int i = 0; i < all.size(); i++) {
            Standing s = all.get(i);
            seen.computeIfAbsent(new Key(s.surface(), s.stick(), s.side()), key -> new ArrayList<>())
                    .add(new Seen(speed, s, read ? Optional.of(harder.get(i)) : Optional.empty()));
        }
    }

    private static boolean movesElevatorOnly(Stick stick) {
        return stick instanceof Stick.Pull pull
                && pull.deflections().values().stream().allMatch(d -> d == 0);
    }

    private Row row(Key key, List<Seen> seen) {
        Standing any = seen.get(0).standing();
        EdgeThrow edge = new EdgeThrow(model.throwChord(key.surface()));
        List<Point> points = new ArrayList<>();
        for (Seen s : seen) {
            s.standing()
                    .inAir()
                    .ifPresent(rest -> points.add(new Point(
                            s.speed(),
                            rest.angle(),
                            edge.distance(rest.angle()),
                            s.pushedHarder().flatMap(Standing::inAir).map(ServoBlowBack.Rest::angle),
                            rest.hold())));
        }
        Side side = key.side() == 0 ? Side.BOTH : key.side() < 0 ? Side.LEFT : Side.RIGHT;
        return new Row(
                key.surface(),
                key.stick(),
                side,
                any.told(),
                edge.chord(),
                any.bench(),
                gapShare(key.surface()),
                model.servo(key.surface()).torque().isPresent(),
                points);
    }

    private double gapShare(String name) {
        Elevator elevator = model.tail().elevator();
        Hinge hinge = name.equals(Servo.ELEVATOR)
                ? elevator.isAllMoving() ? Hinge.TAPED : elevator.hinge()
                : model.wing().surface(name).map(Surface::hinge).orElse(Hinge.TAPED);
        return HingeGap.share(hinge);
    }

    /** Left and right as one where they stand alike. */
    private static List<Row> merged(List<Row> rows) {
        List<Row> merged = new ArrayList<>();
        for (Row row : rows) {
            Optional<Row> left = merged.isEmpty() ? Optional.empty() : Optional.of(merged.get(merged.size() - 1));
            if (left.filter(other -> alike(other, row)).isPresent()) {
                merged.set(merged.size() - 1, both(row));
            } else {
                merged.add(row);
            }
        }
        return merged;
    }

    private static boolean alike(Row left, Row right) {
        boolean pair = left.side() == Side.LEFT
                && right.side() == Side.RIGHT
                && left.surface().equals(right.surface())
                && left.stick().equals(right.stick())
                && left.told() == right.told()
                && left.overSpeed().size() == right.overSpeed().size();
        for (int i = 0; pair && i < left.overSpeed().size(); i++) {
            Point a = left.overSpeed().get(i);
            Point b = right.overSpeed().get(i);
            pair = a.speed() == b.speed() && Math.abs(a.angle() - b.angle()) < ALIKE;
        }
        return pair;
    }

    private static Row both(Row row) {
        return new Row(
                row.surface(),
                row.stick(),
                Side.BOTH,
                row.told(),
                row.chord(),
                row.bench(),
                row.gapShare(),
                row.rated(),
                row.overSpeed());
    }
}
