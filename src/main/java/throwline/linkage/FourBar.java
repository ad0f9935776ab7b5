package throwline.linkage;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import throwline.numerics.Interpolation;

/**
 * Servo arm, straight rod and horn in one plane, solved exactly: the distance between the two holes is the rod's length
 * (methods manual 14.2). The servo's axis lies at the origin, the hinge line ahead of it on the x axis; both arms point to
 * the y side and turn towards x for "down". All answers lie on the branch that is continuous with neutral.
 *
 * <p>Closed form: for a given arm the horn's angle solves {@code u sin + v cos = k}. The linkage locks where horn and rod
 * come into line; the surface turns back where arm and rod do.
 */
public final class FourBar implements Linkage {

    /** Holes in line are in line to this, rad: rounding of the arc cosine. */
    private static final double SLACK = 1e-7;

    private final double arm;
    private final double horn;
    private final double distance;
    private final double rod;
    private final double lean;
    private final int hornSide;
    private final int armSide;
    private final AngleRange servo;
    private final AngleRange surface;

    /**
     * A linkage by the distance of its axes.
     *
     * @param arm hole in the servo arm from the servo's axis, m
     * @param horn hole in the horn from the hinge line, m
     * @param distance servo's axis to hinge line, m
     * @param lean how far both arms lean away from the down side at neutral, rad; 0 where they stand square to the line
     *     between the axes
     */
    public FourBar(double arm, double horn, double distance, double lean) {
        if (!(arm > 0 && horn > 0 && distance > 0)) {
            throw new IllegalArgumentException("lengths above zero, not " + arm + ", " + horn + ", " + distance);
        }
        this.arm = arm;
        this.horn = horn;
        this.distance = distance;
        this.lean = lean;
        double across = distance + (arm - horn) * Math.sin(lean);
        rod = Math.hypot(across, (horn - arm) * Math.cos(lean));
        hornSide = sideOf(-lean, towards(servoHole(0), horn, -1));
        armSide = sideOf(-lean, towards(hornHole(0), arm, 1));
        servo = reach(lean, s -> (arm * arm + distance * distance - s * s) / (2 * arm * distance), rod, horn);
        surface = reach(lean, s -> (s * s - horn * horn - distance * distance) / (2 * horn * distance), rod, arm);
    }

    /**
     * A linkage by the length of its rod.
     *
     * @param arm hole in the servo arm from the servo's axis, m
     * @param horn hole in the horn from the hinge line, m
     * @param rod hole to hole, m; longer than the difference of the arms
     * @param lean how far both arms lean away from the down side at neutral, rad
     */
    public static FourBar ofRod(double arm, double horn, double rod, double lean) {
        double up = (horn - arm) * Math.cos(lean);
        return new FourBar(arm, horn, Math.sqrt(rod * rod - up * up) - (arm - horn) * Math.sin(lean), lean);
    }

    /** Length of the rod, hole to hole, m. */
    public double rod() {
        return rod;
    }

    /** Servo's axis to hinge line, m. */
    public double distance() {
        return distance;
    }

    /** Servo angles between which it does not lock, rad. */
    public AngleRange servo() {
        return servo;
    }

    @Override
    public AngleRange surface() {
        double low = servoAt(surface.low()).isPresent()
                ? surface.low()
                : surfaceAt(servo.low()).orElse(surface.low());
        double high = servoAt(surface.high()).isPresent()
                ? surface.high()
                : surfaceAt(servo.high()).orElse(surface.high());
        return new AngleRange(low, high);
    }

    @Override
    public OptionalDouble surfaceAt(double servoAngle) {
        if (!servo.holds(servoAngle, SLACK)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(towards(servoHole(servoAngle), horn, -1).angle(hornSide) + lean);
    }

    @Override
    public OptionalDouble servoAt(double surfaceAngle) {
        if (!surface.holds(surfaceAngle, SLACK)) {
            return OptionalDouble.empty();
        }
        double angle = towards(hornHole(surfaceAngle), arm, 1).angle(armSide) + lean;
        boolean same = surfaceAt(angle).stream().anyMatch(s -> Math.abs(s - surfaceAngle) < Math.sqrt(SLACK));
        return same ? OptionalDouble.of(angle) : OptionalDouble.empty();
    }

    @Override
    public OptionalDouble ratioAt(double servoAngle) {
        OptionalDouble moved = surfaceAt(servoAngle);
        if (moved.isEmpty()) {
            return moved;
        }
        JointPosition from = servoHole(servoAngle);
        JointPosition to = hornHole(moved.getAsDouble());
        double theta = servoAngle - lean;
        double psi = moved.getAsDouble() - lean;
        double along = to.x - from.x;
        double up = to.y - from.y;
        double byServo = arm * (along * Math.cos(theta) - up * Math.sin(theta));
        double bySurface = horn * (along * Math.cos(psi) - up * Math.sin(psi));
        return OptionalDouble.of(byServo / bySurface);
    }

    private JointPosition servoHole(double servoAngle) {
        return new JointPosition(arm * Math.sin(servoAngle - lean), arm * Math.cos(servoAngle - lean));
    }

    private JointPosition hornHole(double surfaceAngle) {
        return new JointPosition(distance + horn * Math.sin(surfaceAngle - lean), horn * Math.cos(surfaceAngle - lean));
    }

    /** Where the other hole may lie: {@code sign} is -1 for the horn seen from the arm's hole, 1 the other way round. */
    private Circle towards(JointPosition hole, double length, int sign) {
        double u = sign < 0 ? hole.x - distance : hole.x;
        double v = hole.y;
        double far = Math.hypot(u, v);
        double cosine = (far * far + length * length - rod * rod) / (2 * length * far);
        return new Circle(Math.atan2(u, v), Math.acos(Interpolation.clamp(cosine, -1, 1)));
    }

    private static int sideOf(double neutral, Circle circle) {
        return Math.abs(circle.angle(1) - neutral) < Math.abs(circle.angle(-1) - neutral) ? 1 : -1;
    }

    /** The nearest angles on both sides of neutral at which two of the three lie in line. */
    private static AngleRange reach(double lean, DoubleUnaryOperator sine, double rod, double other) {
        double[] angles = DoubleStream.of(rod + other, Math.abs(rod - other))
                .map(sine)
                .filter(s -> Math.abs(s) <= 1)
                .flatMap(s -> DoubleStream.of(Math.asin(s), Math.PI - Math.asin(s), -Math.PI - Math.asin(s)))
                .map(a -> a + lean)
                .toArray();
        double low = DoubleStream.of(angles).filter(a -> a < 0).max().orElse(-Math.PI);
        double high = DoubleStream.of(angles).filter(a -> a > 0).min().orElse(Math.PI);
        return new AngleRange(low, high);
    }

    private record JointPosition(double x, double y) {}

    /**
     * Two places on a circle around an axis.
     *
     * @param middle direction between them, from the y axis towards x, rad
     * @param apart each from the middle, rad
     */
    private record Circle(double middle, double apart) {
        double angle(int side) {
            return Math.IEEEremainder(middle + side * apart, 2 * Math.PI);
        }
    }
}
