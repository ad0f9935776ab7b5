package throwline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import throwline.flight.Deflections;
import throwline.linkage.ControlRun;
import throwline.linkage.ControlRun.Reach;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.numerics.Interpolation;
import throwline.study.ServoAnswer.Position;
import throwline.study.SetUpResult.Side;

/** Places of all surfaces and servos of a model in a set-up, alone and with each stick at full. */
final class Positions {

    private final Model model;
    private final Map<String, ControlRun> runs;

    Positions(Model model) {
        this.model = model;
        runs = ControlRun.of(model);
    }

    /** The positions, surface by surface, the set-up alone before the sticks. */
    List<Position> in(SetUp setUp) {
        List<Position> all = new ArrayList<>();
        for (Surface surface : model.wing().surfaces()) {
            double chord = model.wing().throwChord(surface);
            all.addAll(wing(surface, chord, "", setUp, new Stick.Pull("", Map.of(), 0, List.of())));
            for (Stick stick : model.sticks()) {
                if (stick.worksIn(setUp) && moves(stick, surface.name())) {
                    all.addAll(wing(surface, chord, stick.name(), setUp, stick));
                }
            }
        }
        all.add(elevator("", setUp.elevator()));
        for (Stick stick : model.sticks()) {
            if (stick.worksIn(setUp) && stick instanceof Stick.Pull pull && pull.elevator() != 0) {
                all.add(elevator(pull.name(), setUp.elevator() + pull.elevator()));
            }
        }
        return all;
    }

    private static boolean moves(Stick stick, String surface) {
        return stick instanceof Stick.Roll roll
                ? roll.throwsBySurface().containsKey(surface)
                : ((Stick.Pull) stick).deflections().getOrDefault(surface, 0.0) != 0;
    }

    private List<Position> wing(Surface surface, double chord, String name, SetUp setUp, Stick stick) {
        Deflections there = Deflections.of(model.wing(), setUp, stick, 1);
        double left = there.on(surface, -1);
        double right = there.on(surface, 1);
        boolean leftCut = left != wanted(surface, setUp, stick, -1);
        boolean rightCut = right != wanted(surface, setUp, stick, 1);
        if (left == right && leftCut == rightCut) {
            return List.of(wing(surface, name, Side.BOTH, left, leftCut, chord));
        }
        return List.of(
                wing(surface, name, Side.LEFT, left, leftCut, chord),
                wing(surface, name, Side.RIGHT, right, rightCut, chord));
    }

    private Position wing(Surface surface, String stick, Side side, double angle, boolean cut, double chord) {
        double share = share(angle, surface.travelUp(), surface.travelDown());
        return position(surface.name(), stick, side, angle, cut, share, chord);
    }

    private static double share(double angle, double up, double down) {
        double travel = angle < 0 ? up : down;
        return angle == 0 || travel == 0 ? 0 : angle / travel;
    }

    private static double wanted(Surface surface, SetUp setUp, Stick stick, int side) {
        double base = setUp.deflection(surface.name());
        if (stick instanceof Stick.Roll roll) {
            Stick.Throws both = roll.throwsBySurface().getOrDefault(surface.name(), new Stick.Throws(0, 0));
            return side < 0 ? base + both.down() : base - both.up();
        }
        return base + ((Stick.Pull) stick).deflections().getOrDefault(surface.name(), 0.0);
    }

    /** The elevator to mix in. */
    Position mix(double angle) {
        return elevator("", angle);
    }

    private Position elevator(String stick, double wanted) {
        Elevator elevator = model.tail().elevator();
        double angle = Interpolation.clamp(wanted, -elevator.travelUp(), elevator.travelDown());
        double chord = model.tail().throwChord();
        return position(
                Servo.ELEVATOR,
                stick,
                Side.BOTH,
                angle,
                angle != wanted,
                share(angle, elevator.travelUp(), elevator.travelDown()),
                chord);
    }

    private Position position(
            String surface, String stick, Side side, double angle, boolean cut, double travelShare, double chord) {
        ControlRun run = Objects.requireNonNull(runs.get(surface));
        ControlRun.Position there = run.at(angle);
        Optional<Double> servo = there.servo().stream().boxed().findFirst();
        Reach reach = run.reach(angle);
        return new Position(
                surface,
                stick,
                side,
                angle,
                cut,
                travelShare,
                chord,
                servo,
                servo.map(s -> there.share()),
                reach,
                run.assumed());
    }
}
