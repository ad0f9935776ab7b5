package throwline.liftingline;

/** Reads the quantity that a row of the table of check values names. */
final class WingCaseReading {

    private static final double SLOPE = 2 * Math.PI;
    private static final double HELIX = 0.05;

    private final WingCase row;
    private final TheoryWing wing;
    private final double incidence;

    WingCaseReading(WingCase row) {
        this.row = row;
        wing = row.wing();
        incidence = row.incidence(wing);
    }

    double read(String quantity) {
        if (quantity.startsWith("section lift in a roll of 0.05 ")) {
            return sectionLift(wing.solve(incidence, Motion.rolling(0.05)), last(quantity));
        }
        if (quantity.startsWith("section lift ")) {
            return sectionLift(wing.solve(incidence, Motion.straight()), last(quantity));
        }
        if (quantity.startsWith("washout factor ")) {
            return washoutFactor(quantity.substring(quantity.length() - 1));
        }
        StripForces forces = wing.at(incidence);
        return switch (quantity) {
            case "lift" -> forces.liftCoefficient();
            case "induced drag" -> forces.inducedDragCoefficient();
            case "incidence" -> Math.toDegrees(incidence);
            case "lift slope" -> forces.liftCoefficient() / incidence;
            case "efficiency" -> 1 / dragFactor(forces);
            case "one plus delta" -> dragFactor(forces);
            case "one plus tau" -> onePlusTau(forces.liftCoefficient() / incidence);
            case "pitching" -> forces.pitchingCoefficient(0);
            case "centre of load" -> centreOfLoad(forces);
            case "span factor" ->
                forces.liftCoefficient() / row.flappedOverTheSpan().at(0).liftCoefficient();
            case "taper of least drag" -> taperOfLeastDrag();
            default -> turning(quantity, forces);
        };
    }

    private double turning(String quantity, StripForces forces) {
        return switch (quantity) {
            case "rolling" -> forces.rollingCoefficient();
            case "yawing" -> forces.yawingCoefficient();
            case "rolling per shift" ->
                forces.rollingCoefficient() / row.surfaces().get(0).left();
            case "roll damping" -> rollDamping();
            case "steady helix" -> -forces.rollingCoefficient() / rollDamping();
            case "yaw due to roll" -> yawDueToRoll(true, true);
            case "yaw due to roll by the wake" -> yawDueToRoll(true, false);
            case "yaw due to roll by the tilt" -> yawDueToRoll(false, true);
            default -> elsewhere(quantity, forces);
        };
    }

    private double elsewhere(String quantity, StripForces forces) {
        return switch (quantity) {
            case "lift at first section lift 1.4" -> row.wing().at(firstStall()).liftCoefficient();
            case "place of first section lift 1.4" -> fullestPlace(firstStall());
            case "lift ratio in ground effect" ->
                row.nearTheGround().at(incidence).liftCoefficient() / forces.liftCoefficient();
            case "drag ratio in ground effect" -> dragFactor(row.nearTheGround().at(incidence)) / dragFactor(forces);
            case "elliptic load drag ratio in ground effect" -> ellipticDrag(row.nearTheGround()) / ellipticDrag(wing);
            default -> throw new IllegalArgumentException("no quantity " + quantity);
        };
    }

    private double dragFactor(StripForces forces) {
        double lift = forces.liftCoefficient();
        return forces.inducedDragCoefficient() * Math.PI * row.planform().aspect() / (lift * lift);
    }

    /** From CL_alpha = a0 / (1 + a0 / (pi AR) (1 + tau)). */
    private double onePlusTau(double liftSlope) {
        return (SLOPE / liftSlope - 1) * Math.PI * row.planform().aspect() / SLOPE;
    }

    private double rollDamping() {
        double with = wing.at(incidence, Motion.rolling(HELIX)).rollingCoefficient();
        return (with - wing.at(incidence).rollingCoefficient()) / HELIX;
    }

    private double yawDueToRoll(boolean wake, boolean tilt) {
        return (yawing(HELIX, wake, tilt) - yawing(-HELIX, wake, tilt)) / (2 * HELIX);
    }

    private double yawing(double helix, boolean wake, boolean tilt) {
        StripForces forces = wing.at(incidence, Motion.rolling(helix));
        double sum = 0;
        for (int i = 0; i < wing.grid.size(); i++) {
            double byWake = forces.inducedDrag(i);
            double byTilt = forces.drag(i) - forces.profileDrag(i) - byWake;
            sum += ((wake ? byWake : 0) + (tilt ? byTilt : 0)) * wing.grid.control(i);
        }
        return sum / (wing.grid.area() * wing.grid.span());
    }

    /** Circulation between the control points on both sides of a place, linear in the angle of the span. */
    private double sectionLift(LiftingLineSolution solution, double place) {
        int i = wing.grid.size() - 2;
        while (wing.grid.control(i) > place) {
            i--;
        }
        double a = Math.acos(wing.grid.control(i));
        double b = Math.acos(Math.min(1, wing.grid.control(i + 1)));
        double share = (Math.acos(place) - a) / (b - a);
        double circulation = solution.circulation(i) + share * (solution.circulation(i + 1) - solution.circulation(i));
        return 2 * circulation / row.planform().chord(place);
    }

    private double centreOfLoad(StripForces forces) {
        double moment = 0;
        double lift = 0;
        for (int i = wing.grid.size() / 2; i < wing.grid.size(); i++) {
            moment += forces.lift(i) * wing.grid.control(i);
            lift += forces.lift(i);
        }
        return moment / lift;
    }

    private double taperOfLeastDrag() {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 20; k <= 60; k++) {
            double drag = dragFactor(row.tapered(k / 100.0).at(incidence));
            if (drag < least) {
                least = drag;
                best = k / 100.0;
            }
        }
        return best;
    }

    /** Factors of CDi = CL^2 / (pi AR u) + CL t a0 v + (t a0)^2 w and of the lift slope f a0 / (1 + a0 / (pi AR)). */
    private double washoutFactor(String name) {
        double twist = row.planform().twist(1) * SLOPE;
        double aspect = row.planform().aspect();
        StripForces flat = row.flat().at(incidence);
        double u = 1 / dragFactor(flat);
        double w = wing.at(wing.incidenceFor(0)).inducedDragCoefficient() / (twist * twist);
        double lift = 0.5;
        double drag = wing.at(wing.incidenceFor(lift)).inducedDragCoefficient();
        return switch (name) {
            case "f" -> flat.liftCoefficient() / incidence / SLOPE * (1 + SLOPE / (Math.PI * aspect));
            case "u" -> u;
            case "v" -> (drag - lift * lift / (Math.PI * aspect * u) - twist * twist * w) / (lift * twist);
            case "w" -> w;
            default -> throw new IllegalArgumentException("no factor " + name);
        };
    }

    /** Incidence at which the fullest section carries 1.4: the load of a linear wing is linear in incidence. */
    private double firstStall() {
        LiftingLineSolution at0 = wing.solve(0, Motion.straight());
        LiftingLineSolution at1 = wing.solve(0.1, Motion.straight());
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < wing.grid.size(); i++) {
            double slope = (at1.lift(i) - at0.lift(i)) / 0.1;
            least = Math.min(least, (1.4 - at0.lift(i)) / slope);
        }
        return least;
    }

    private double fullestPlace(double angle) {
        LiftingLineSolution solution = wing.solve(angle, Motion.straight());
        int fullest = wing.grid.size() / 2;
        for (int i = fullest; i < wing.grid.size(); i++) {
            if (solution.lift(i) > solution.lift(fullest)) {
                fullest = i;
            }
        }
        return wing.grid.control(fullest);
    }

    /** Induced drag of a given elliptic circulation. */
    private static double ellipticDrag(TheoryWing wing) {
        SpanGrid grid = wing.grid;
        double[] circulation = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            circulation[i] = Math.sqrt(1 - grid.control(i) * grid.control(i));
        }
        double drag = 0;
        double[] wake = wing.influence.wakeAngles(circulation);
        for (int i = 0; i < grid.size(); i++) {
            drag += circulation[i] * wake[i] * grid.width(i);
        }
        return drag;
    }

    private static double last(String quantity) {
        return Double.parseDouble(quantity.substring(quantity.lastIndexOf(' ') + 1));
    }
}
