package throwline.linkage;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import throwline.model.Elevator;
import throwline.model.Model;
import throwline.model.Servo;
import throwline.model.Surface;
import throwline.numerics.Interpolation;

/**
 * Servo and linkage of a surface.
 *
 * @param surface name of the surface, {@link Servo#ELEVATOR} for the elevator
 * @param linkage how the servo moves it
 * @param rating torque of the servo, N m; empty where not given
 * @param swing how far the servo turns to each side, rad
 * @param offset how far the servo stands from the middle of its swing with the surface at neutral, rad, away from the down
 *     side positive
 * @param assumed true where the linkage was not given: its full swing is then taken to give the full travel, evenly
 */
public record ControlRun(
        String surface, Linkage linkage, OptionalDouble rating, double swing, double offset, boolean assumed) {

    /** Below this share of the neutral ratio the servo's last degrees hardly move the surface (common practice, no source). */
    private static final double HARDLY = 0.25;

    /** Usual swing to each side, rad (PRACTICE, methods manual 17.5). */
    private static final double USUAL_SWING = Math.toRadians(45);

    /** Rod over horn where its length is not given (common practice, no source). */
    private static final double USUAL_ROD = 5;

    /** Share of a servo's work that reaches the surface (PRACTICE, methods manual 14.1). */
    private static final double EFFICIENCY = 0.8;

    /** Where leverage is looked at on the way to a deflection: so many parts of the way. */
    private static final int PARTS = 20;

    /** The runs of a model by surface name, the elevator's last. */
    public static Map<String, ControlRun> of(Model model) {
        Map<String, ControlRun> runs = new LinkedHashMap<>();
        for (Surface s : model.wing().surfaces()) {
            runs.put(s.name(), of(model.servo(s.name()), Math.max(s.travelUp(), s.travelDown())));
        }
        Elevator e = model.tail().elevator();
        runs.put(Servo.ELEVATOR, of(model.servo(Servo.ELEVATOR), Math.max(e.travelUp(), e.travelDown())));
        return runs;
    }

    private static ControlRun of(Servo servo, double travel) {
        double swing = servo.swing().orElse(USUAL_SWING);
        boolean known = servo.arm().isPresent() && servo.horn().isPresent();
        Linkage linkage = new EvenLinkage(Math.max(travel, Math.toRadians(1)) / swing);
        if (known) {
            double horn = servo.horn().getAsDouble();
            double rod = servo.rod().orElse(USUAL_ROD * horn);
            linkage = FourBar.ofRod(servo.arm().getAsDouble(), horn, rod, servo.lean());
        }
        return new ControlRun(servo.surface(), linkage, servo.torque(), swing, servo.offset(), !known);
    }

    /** Whether a servo gets a surface to an angle. */
    public enum Reach {
        /** It does. */
        FREE,
        /** The linkage locks, or turns back, before. */
        LOCKED,
        /** The servo's swing ends before. */
        BEYOND_SWING,
        /** It does, but the servo's last degrees hardly move the surface. */
        SLACKENING
    }

    /** Whether the servo gets the surface to an angle, rad, and whether its last degrees still move it. */
    public Reach reach(double angle) {
        Reach reach = at(angle).reach();
        return reach == Reach.FREE && evenness(angle) < HARDLY ? Reach.SLACKENING : reach;
    }

    /**
     * Where the servo stands for an angle of the surface.
     *
     * @param servo from where the surface is at neutral, rad, down positive; empty where the linkage locks before
     * @param share of the swing to that side, from the middle of the swing, down positive; 0 where the linkage locks
     * @param reach whether the servo gets it there
     */
    public record Position(OptionalDouble servo, double share, Reach reach) {}

    /** Where the servo stands for an angle of the surface, rad. */
    public Position at(double deflection) {
        OptionalDouble servo = linkage.servoAt(deflection);
        if (servo.isEmpty()) {
            return new Position(servo, 0, Reach.LOCKED);
        }
        double share = (servo.getAsDouble() - offset) / swing;
        return new Position(servo, share, Math.abs(share) > 1 + 1e-9 ? Reach.BEYOND_SWING : Reach.FREE);
    }

    /**
     * Where a surface stands on the bench when its servo is told to bring it to an angle, nothing pushing: there, or short
     * of it where the linkage locks or the servo's swing ends before.
     *
     * @param deflection wanted, rad
     * @return rad
     */
    public double benchAngle(double deflection) {
        double reached = linkage.surface().clamp(deflection);
        double servo = linkage.servoAt(reached).orElse(0);
        double turned = Interpolation.clamp(servo, offset - swing, offset + swing);
        return turned == servo ? reached : linkage.surfaceAt(turned).orElse(reached);
    }

    /**
     * Torque that the servo needs to bring a surface to an angle and hold it there: the largest on the way, the hinge moment
     * taken in proportion to the angle, friction by an efficiency of 0.8.
     *
     * @param deflection where the surface goes, rad
     * @param hinge hinge moment there, N m
     * @return N m, not negative; empty where the linkage does not reach the angle
     */
    public OptionalDouble servoTorque(double deflection, double hinge) {
        double leverage = 0;
        for (double part : IntStream.rangeClosed(1, PARTS)
                .mapToDouble(k -> (double) k / PARTS)
                .toArray()) {
            OptionalDouble ratio = linkage.servoAt(part * deflection).stream()
                    .flatMap(servo -> linkage.ratioAt(servo).stream())
                    .findFirst();
            if (ratio.isEmpty()) {
                return ratio;
            }
            leverage = Math.max(leverage, part * Math.abs(ratio.getAsDouble()));
        }
        return OptionalDouble.of(leverage * Math.abs(hinge) / EFFICIENCY);
    }

    /**
     * Surface angle gained per servo angle there over the same at neutral: 1 is even; near 0 the arm lies along the rod, and
     * the servo's last degrees move nothing; 0 where the angle is not reached.
     */
    public double evenness(double deflection) {
        OptionalDouble there = linkage.servoAt(deflection).stream()
                .flatMap(servo -> linkage.ratioAt(servo).stream())
                .findFirst();
        double neutral = linkage.ratioAt(0).orElse(1);
        return there.isPresent() ? there.getAsDouble() / neutral : 0;
    }
}
