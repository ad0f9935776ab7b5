package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import throwline.air.Air;
import throwline.air.Gravity;
import throwline.liftingline.CarryOver;
import throwline.liftingline.ChordCorrection;
import throwline.liftingline.Ground;
import throwline.liftingline.InfluenceMatrix;
import throwline.liftingline.LiftingLineProblem;
import throwline.liftingline.LiftingLineSolution;
import throwline.liftingline.LiftingLineSolver;
import throwline.liftingline.Motion;
import throwline.liftingline.SolverSettings;
import throwline.liftingline.StripForces;
import throwline.liftingline.WingStrips;
import throwline.model.AirfoilName;
import throwline.model.Battery;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.numerics.Interpolation;
import throwline.power.DriveFitting;
import throwline.power.FittedDrive;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/** Model in the air of its field: all that depends neither on set-up nor on pack. Immutable. */
public final class Airframe {

    /** Strips over the wing: four figures of lift (grid convergence test of the lifting line). */
    private static final int STRIPS = 80;

    /** Speed at which constant drag items are worked out, m/s: between approach and cruise of these models. */
    private static final double TYPICAL_SPEED = 15;

    /** Lift at which the clean wing's section drag is taken for gaps and interference. */
    private static final double TYPICAL_LIFT = 0.4;

    /** Lift over angle of wings, per rad, between which that of any model lies. */
    private static final double FLATTEST = 2.5;

    private static final double STEEPEST = 2 * Math.PI;

    private static final int LOWEST_DEGREE = -10;

    private final Model model;
    private final Air air;
    private final AirfoilLibrary airfoils;
    private final SectionAerodynamics sections;
    private final Function<InfluenceMatrix, LiftingLineSolver> solvers;
    private final WingStrips strips;
    private final InfluenceMatrix influence;
    private final List<DragItem> items;
    private final double bodyMoment;
    private final Map<Battery, FittedDrive> drives;

    /**
     * Makes a model ready to fly.
     *
     * @param model the model
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param sections makes section curves
     */
    public Airframe(Model model, AirfoilLibrary airfoils, SectionAerodynamics sections) {
        this(model, airfoils, sections, List.of());
    }

    /**
     * Makes a model with more parts that only resist ready to fly.
     *
     * @param model the model
     * @param airfoils where its airfoils are found; every name of the model must be there
     * @param sections makes section curves
     * @param more parts that a model file does not describe
     */
    public Airframe(Model model, AirfoilLibrary airfoils, SectionAerodynamics sections, List<DragItem> more) {
        this(model, airfoils, sections, more, influence -> new LiftingLineSolver(influence, SolverSettings.standard()));
    }

    /** The same with lifting lines of one's own, for example such as note what they are asked. */
    Airframe(
            Model model,
            AirfoilLibrary airfoils,
            SectionAerodynamics sections,
            List<DragItem> more,
            Function<InfluenceMatrix, LiftingLineSolver> solvers) {
        this.model = model;
        this.airfoils = airfoils;
        this.sections = sections;
        this.solvers = solvers;
        drives = new ConcurrentHashMap<>();
        air = Air.at(model.field().heightAboveSea(), model.field().temperature());
        strips = new WingStrips(model.wing(), CarryOver.of(model), airfoils, sections, STRIPS);
        influence = new InfluenceMatrix(strips.grid(), Ground.none(), ChordCorrection.of(strips.grid()));
        bodyMoment = BodyMoment.slope(model.body());
        double reynoldsPerMetre = reynoldsPerMetre(TYPICAL_SPEED);
        List<DragItem> parts = new ArrayList<>(new DragItems(model, reynoldsPerMetre).all());
        parts.add(new DragItem(
                "gaps and corners",
                roughness() * strips.grid().area() * cleanProfileDrag(reynoldsPerMetre),
                model.wing().height(),
                DragItem.Part.WING));
        parts.addAll(more);
        items = List.copyOf(parts);
    }

    private Airframe(Airframe other, Model model) {
        this.model = model;
        air = other.air;
        airfoils = other.airfoils;
        sections = other.sections;
        solvers = other.solvers;
        strips = other.strips;
        influence = other.influence;
        items = other.items;
        bodyMoment = other.bodyMoment;
        drives = other.drives;
    }

    /** The same model with other set-ups, without the work of making it ready once more. */
    public Airframe with(List<SetUp> setUps) {
        return new Airframe(this, model.withSetUps(setUps));
    }

    /**
     * Drag of hinge gaps, horns and the corner of wing and body over the clean wing's section drag (PRACTICE,
     * methods manual 8.4: gaps 5 to 15 per cent, corner 5 to 10 above or in the middle, 10 to 20 for a low wing).
     */
    private double roughness() {
        boolean open = model.wing().surfaces().stream().map(Surface::hinge).anyMatch(Hinge.OPEN::equals);
        double gaps = model.wing().surfaces().isEmpty() ? 0 : open ? 0.15 : 0.05;
        double corner = model.wing().height() < -model.body().height() / 4 ? 0.15 : 0.075;
        return gaps + corner;
    }

    private double cleanProfileDrag(double reynoldsPerMetre) {
        List<SectionCurve> curves = strips.curves((surface, side) -> 0.0, reynoldsPerMetre);
        LiftingLineSolver solver = wingSolver();
        Optional<LiftingLineSolution> last = Optional.empty();
        double low = Double.NaN;
        double lowLift = Double.NaN;
        for (int degree = below(solver, curves); degree <= 15; degree++) {
            LiftingLineSolution solution =
                    solver.solve(LiftingLineProblem.of(curves, Math.toRadians(degree), Motion.straight()), last);
            last = Optional.of(solution);
            StripForces forces = StripForces.of(solution);
            double lift = forces.liftCoefficient();
            double drag = forces.profileDragCoefficient();
            if (lift >= TYPICAL_LIFT) {
                double share = Double.isNaN(low) ? 1 : (TYPICAL_LIFT - lowLift) / (lift - lowLift);
                return Double.isNaN(low) ? drag : low + share * (drag - low);
            }
            low = drag;
            lowLift = lift;
        }
        return low;
    }

    /** Whole degree below that lift, not far; the lowest that is looked at where a straight line from level flight errs. */
    private static int below(LiftingLineSolver solver, List<SectionCurve> curves) {
        double level = lift(solver, curves, 0);
        double slope = level < TYPICAL_LIFT ? STEEPEST : FLATTEST;
        double degrees = Math.floor(Math.toDegrees((TYPICAL_LIFT - level) / slope)) - 1;
        int degree = (int) Interpolation.clamp(degrees, LOWEST_DEGREE, 15);
        return lift(solver, curves, degree) < TYPICAL_LIFT ? degree : LOWEST_DEGREE;
    }

    private static double lift(LiftingLineSolver solver, List<SectionCurve> curves, int degree) {
        LiftingLineProblem problem = LiftingLineProblem.of(curves, Math.toRadians(degree), Motion.straight());
        return StripForces.of(solver.solve(problem, Optional.empty())).liftCoefficient();
    }

    /** The model. */
    public Model model() {
        return model;
    }

    /** The air at its field. */
    public Air air() {
        return air;
    }

    /** The motor with the battery of a pack, fitted when it is first asked for; empty where too little is known. */
    public Optional<FittedDrive> drive(Pack pack) {
        return model.isPowered(pack)
                ? Optional.of(drives.computeIfAbsent(
                        pack.battery().orElseThrow(),
                        battery -> DriveFitting.of(model, pack, air.density()).orElseThrow()))
                : Optional.empty();
    }

    /** The wing's strips. */
    public WingStrips strips() {
        return strips;
    }

    /** The parts that only resist. */
    public List<DragItem> dragItems() {
        return items;
    }

    /** The body's moment over dynamic pressure and angle, m^3/rad, nose up positive. */
    double bodyMoment() {
        return bodyMoment;
    }

    /** The balance of a steady descent with a pack. */
    SteadyDescent balance(Pack pack) {
        return new SteadyDescent(
                pack.mass() * Gravity.STANDARD, air.density(), model.wing().area());
    }

    /** Reynolds number per metre of chord at a speed. */
    public double reynoldsPerMetre(double speed) {
        return speed / air.kinematicViscosity();
    }

    /** The wing's influence matrix in free air. */
    InfluenceMatrix influence() {
        return influence;
    }

    /** A solver for the wing in free air; it holds its workspace, so each thread takes its own. */
    LiftingLineSolver wingSolver() {
        return solver(influence);
    }

    /** A solver for wing or tail with this matrix; it holds its workspace, so each thread takes its own. */
    LiftingLineSolver solver(InfluenceMatrix matrix) {
        return solvers.apply(matrix);
    }

    /** The tail above this ground; it holds its workspace, so each thread takes its own. */
    TailSurface tailSurface(Ground ground) {
        AirfoilName name = model.tail().airfoil();
        Airfoil airfoil =
                airfoils.find(name).orElseThrow(() -> new IllegalArgumentException("no airfoil " + name.text()));
        return new TailSurface(model.tail(), airfoil, sections, ground, solvers);
    }
}
