package throwline.power;

import throwline.numerics.Interpolation;

/**
 * A propeller by blade elements with the momentum of each ring of the disc and Prandtl's loss at the tips (Glauert, Betz;
 * methods manual 20.1). Solved for the angle of the flow, which has no singular point at rest: the same equations hold on
 * the bench, in flight and where the air drives the propeller.
 */
public final class BladeElements {

    /** Chord at three quarters of the radius over the radius where nothing is known of the kind. */
    public static final double USUAL_CHORD = 0.184;

    private static final double[] STATIONS = {.20, .28, .36, .44, .52, .60, .68, .75, .82, .88, .93, .97};
    private static final double ROOT = 0.15;

    /** Chord over that at three quarters of the radius, of a usual blade (COMPUTED from pictures, PRACTICE). */
    private static final double[] PLANFORM_AT = {.15, .25, .35, .45, .55, .65, .75, .85, .92, .96, 1.0};

    private static final double[] PLANFORM = {.80, .98, 1.12, 1.17, 1.15, 1.09, 1.00, .86, .70, .52, .25};

    /** Kinematic viscosity at which Reynolds numbers of blades are taken, m^2/s: sea level, 15 C, within a tenth. */
    private static final double VISCOSITY = 1.5e-5;

    private static final double FIRST_ANGLE = 0.002;
    private static final double LAST_ANGLE = 1.45;
    private static final int SCANS = 90;
    private static final int HALVINGS = 30;
    private static final double LEAST_TIP_FACTOR = 0.001;

    /** Share of a blade's speed over which the forces are differenced. */
    private static final double OBLIQUE_STEP = 1e-3;

    private final double diameter;
    private final double pitch;
    private final int blades;
    private final double chord;

    /**
     * @param diameter m
     * @param pitch m
     * @param blades number of blades
     * @param chord chord at three quarters of the radius over the radius
     */
    public BladeElements(double diameter, double pitch, int blades, double chord) {
        this.diameter = diameter;
        this.pitch = pitch;
        this.blades = blades;
        this.chord = chord;
    }

    /** The same propeller with blades of another chord. */
    BladeElements chord(double other) {
        return new BladeElements(diameter, pitch, blades, other);
    }

    /** Diameter, m. */
    public double diameter() {
        return diameter;
    }

    /** Pitch over diameter. */
    double pitchRatio() {
        return pitch / diameter;
    }

    /** Chord at three quarters of the radius over the radius. */
    double chord() {
        return chord;
    }

    /**
     * Thrust and power.
     *
     * @param advance advance ratio: airspeed over turns a second and diameter, not negative
     * @param turns turns a second, positive; it counts for the Reynolds number only
     */
    public Coefficients at(double advance, double turns) {
        double radius = diameter / 2;
        double omega = 2 * Math.PI * turns;
        double speed = advance * turns * diameter;
        double thrust = 0;
        double torque = 0;
        for (int k = 0; k < STATIONS.length; k++) {
            Element e = element(STATIONS[k], omega, speed);
            double width = (edge(k + 1) - edge(k)) * radius;
            double load = blades / 2.0 * e.air * e.air * e.chord * width;
            thrust += load * e.along;
            torque += load * e.round * STATIONS[k] * radius;
        }
        double scale = turns * turns * Math.pow(diameter, 4);
        return new Coefficients(thrust / scale, 2 * Math.PI * torque / (scale * diameter));
    }

    /** Flow at a station: for tests and for the stall of blades. */
    Element element(double x, double omega, double speed) {
        double c = chordAt(x);
        double round = omega * x * diameter / 2;
        Ring ring = new Ring(x, c, round, speed, c * Math.hypot(round, speed) / VISCOSITY);
        double phi = ring.flowAngle();
        double f = ring.tipFactor(phi);
        double air = round / (Math.cos(phi) + ring.solidity * ring.round(phi) / (4 * f * Math.sin(phi)));
        return new Element(phi, ring.face - phi, ring.reynolds, f, air, c, ring.along(phi), ring.round(phi));
    }

    /**
     * The air at one station of a blade.
     *
     * @param flow angle of the flow to the disc, rad
     * @param alpha angle of attack from zero lift, rad
     * @param reynolds Reynolds number
     * @param tipFactor Prandtl's factor
     * @param air speed of the air over the section, m/s
     * @param chord m
     * @param along force coefficient along the axis
     * @param round force coefficient against the turning
     */
    record Element(
            double flow,
            double alpha,
            double reynolds,
            double tipFactor,
            double air,
            double chord,
            double along,
            double round) {}

    /** One ring of the disc. */
    private final class Ring {
        private final double x;
        private final double turning;
        private final double speed;
        private final double reynolds;
        private final double face;
        private final double solidity;

        Ring(double x, double c, double turning, double speed, double reynolds) {
            this.x = x;
            this.turning = turning;
            this.speed = speed;
            this.reynolds = reynolds;
            face = geometric(x) + BladeSection.FACE_TO_ZERO_LIFT;
            solidity = blades * c / (Math.PI * x * diameter);
        }

        double along(double phi) {
            double alpha = face - phi;
            return BladeSection.lift(alpha) * Math.cos(phi) - BladeSection.drag(alpha, reynolds) * Math.sin(phi);
        }

        double round(double phi) {
            double alpha = face - phi;
            return BladeSection.lift(alpha) * Math.sin(phi) + BladeSection.drag(alpha, reynolds) * Math.cos(phi);
        }

        double tipFactor(double phi) {
            double f = 2 / Math.PI * Math.acos(Math.exp(-blades * (1 - x) / (2 * x * Math.abs(Math.sin(phi)))));
            return Math.max(LEAST_TIP_FACTOR, f);
        }

        /** Momentum of the ring against the blades' force; falls through zero nowhere but at the flow angle. */
        private double balance(double phi) {
            double f = tipFactor(phi);
            double sin = Math.sin(phi);
            return turning * (sin * sin - solidity * along(phi) / (4 * f))
                    - speed * (sin * Math.cos(phi) + solidity * round(phi) / (4 * f));
        }

        double flowAngle() {
            double step = (LAST_ANGLE - FIRST_ANGLE) / SCANS;
            double low = FIRST_ANGLE;
            double high = LAST_ANGLE;
            boolean below = balance(low) < 0;
            for (int k = 1; k <= SCANS; k++) {
                double next = FIRST_ANGLE + k * step;
                boolean nextBelow = balance(next) < 0;
                if (below && !nextBelow) {
                    high = next;
                    break;
                }
                below = nextBelow;
                low = next;
            }
            for (int k = 0; k < HALVINGS; k++) {
                double middle = (low + high) / 2;
                if (balance(middle) < 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return (low + high) / 2;
        }
    }

    /** Angle of the flat face at a station, rad. */
    private double geometric(double x) {
        return Math.atan(pitchRatio() / (Math.PI * x));
    }

    private double chordAt(double x) {
        return chord * diameter / 2 * Interpolation.at(PLANFORM_AT, PLANFORM, x);
    }

    private static double edge(int k) {
        return k == 0 ? ROOT : k == STATIONS.length ? 1 : (STATIONS[k - 1] + STATIONS[k]) / 2;
    }

    /**
     * What the blades do across the axis when the air meets it at an angle, the induced flow held: each blade is faster on the
     * side on which it goes against the air.
     *
     * @param speed airspeed, m/s
     * @param turns turns a second, positive
     * @param density kg/m^3
     */
    public Oblique oblique(double speed, double turns, double density) {
        double omega = 2 * Math.PI * turns;
        double across = 0;
        double moment = 0;
        for (int k = 0; k < STATIONS.length; k++) {
            Element e = element(STATIONS[k], omega, speed);
            double width = (edge(k + 1) - edge(k)) * diameter / 2;
            double faster = force(e, 1 + OBLIQUE_STEP, false) - force(e, 1 - OBLIQUE_STEP, false);
            double pulling = force(e, 1 + OBLIQUE_STEP, true) - force(e, 1 - OBLIQUE_STEP, true);
            double round = 2 * OBLIQUE_STEP * e.air * Math.cos(e.flow);
            across += width * faster / round;
            moment += width * STATIONS[k] * diameter / 2 * pulling / round;
        }
        double scale = blades / 2.0 * density * speed;
        return new Oblique(scale * across, scale * moment);
    }

    /** Force of one blade a metre of span over density, along the axis or against the turning, its own speed times a factor. */
    private static double force(Element e, double factor, boolean along) {
        double axial = e.air * Math.sin(e.flow);
        double round = factor * e.air * Math.cos(e.flow);
        double phi = Math.atan2(axial, round);
        double alpha = e.alpha + e.flow - phi;
        double lift = BladeSection.lift(alpha);
        double drag = BladeSection.drag(alpha, e.reynolds);
        double coefficient =
                along ? lift * Math.cos(phi) - drag * Math.sin(phi) : lift * Math.sin(phi) + drag * Math.cos(phi);
        return (axial * axial + round * round) / 2 * e.chord * coefficient;
    }

    /**
     * Force and moment for each radian between axis and air.
     *
     * @param normal across the axis, N
     * @param yawing to the left with the nose up and a propeller that turns to the right seen from behind, N m
     */
    public record Oblique(double normal, double yawing) {}

    /** Area of all blades seen from the side, averaged over a turn, m^2: what stands across the air like a fin. */
    public double sideArea() {
        double sum = 0;
        for (int k = 0; k < STATIONS.length; k++) {
            double x = STATIONS[k];
            sum += chordAt(x) * Math.sin(geometric(x)) * (edge(k + 1) - edge(k)) * diameter / 2;
        }
        return 2 / Math.PI * blades * sum;
    }

    /** Drag of blades held still over dynamic pressure, m^2, with flat plates of this drag coefficient. */
    double stoppedDrag(double plate) {
        double sum = 0;
        for (int k = 0; k < STATIONS.length; k++) {
            double x = STATIONS[k];
            sum += chordAt(x) * Math.pow(Math.cos(geometric(x)), 2) * (edge(k + 1) - edge(k)) * diameter / 2;
        }
        return plate * blades * sum;
    }
}
