package throwline.liftingline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import throwline.model.AirfoilName;
import throwline.model.Hinge;
import throwline.model.Surface;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.PolarRun;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;

/**
 * Wings of a seeded generator: one to four panels a side, taper, washout, sweep to 15 degrees, dihedral, up to eight
 * surfaces a side deflected apart left and right, gaps between them, near the ground or not, turning or not.
 */
final class RandomWing {

    private static final AirfoilName AIRFOIL = new AirfoilName("invented");

    private final Random random;
    private final WingStrips strips;
    private final LiftingLineSolver solver;
    private final List<SectionCurve> curves;
    private final Motion motion;

    RandomWing(Random random, SectionAerodynamics sections, AirfoilLibrary airfoils) {
        this.random = random;
        double semiSpan = between(0.5, 1.5);
        double root = 2 * semiSpan / between(4, 14);
        int panels = 1 + random.nextInt(4);
        double sweep = random.nextBoolean() ? 0 : between(-15, 15);
        List<WingSection> stations = new ArrayList<>();
        for (int k = 0; k <= panels; k++) {
            double at = semiSpan * k / panels;
            double chord = k == 0 ? root : stations.get(k - 1).chord() * between(0.6, 1.05);
            double back = at * Math.tan(Math.toRadians(sweep)) - (chord - root) / 4;
            double washout = k == 0 ? 0 : Math.toRadians(between(-2, 5));
            stations.add(new WingSection(at, chord, AIRFOIL, washout, back));
        }
        double dihedral = random.nextBoolean() ? 0 : Math.toRadians(between(-2, 8));
        Wing wing = new Wing(0, 0, dihedral, stations, surfaces(semiSpan));
        strips = new WingStrips(wing, airfoils, sections, random.nextInt(20) == 0 ? 160 : 20 + 2 * random.nextInt(30));
        Ground ground =
                random.nextInt(4) > 0 ? Ground.none() : new Ground(semiSpan * between(0.15, 1), random.nextBoolean());
        ChordCorrection correction =
                random.nextInt(4) == 0 ? ChordCorrection.none() : ChordCorrection.of(strips.grid());
        solver = new LiftingLineSolver(
                new InfluenceMatrix(strips.grid(), ground, correction), SolverSettings.standard());
        boolean apart = random.nextInt(3) > 0;
        Map<String, Double> left = new HashMap<>();
        Map<String, Double> right = new HashMap<>();
        for (Surface surface : wing.surfaces()) {
            right.put(surface.name(), Math.toRadians(between(-30, 60)));
            left.put(surface.name(), apart ? Math.toRadians(between(-30, 60)) : right.get(surface.name()));
        }
        curves = strips.curves((surface, side) -> side < 0 ? left.get(surface.name()) : right.get(surface.name()), 1e6);
        motion = random.nextBoolean()
                ? Motion.straight()
                : new Motion(
                        between(-0.3, 0.3) / semiSpan,
                        between(-0.05, 0.05),
                        between(-0.2, 0.2) / semiSpan,
                        between(-0.2, 0.2));
    }

    private List<Surface> surfaces(double semiSpan) {
        int count = random.nextInt(9);
        List<Surface> surfaces = new ArrayList<>();
        double room = semiSpan / Math.max(1, count);
        for (int k = 0; k < count; k++) {
            double from = room * (k + (random.nextBoolean() ? 0 : between(0, 0.3)));
            double to = room * (k + 1 - (random.nextBoolean() ? 0 : between(0, 0.3)));
            surfaces.add(new Surface("surface " + k, from, to, 0.25, 1, 1, Hinge.TAPED));
        }
        return surfaces;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The surface's problem at an incidence, rad. */
    LiftingLineProblem at(double incidence) {
        return LiftingLineProblem.of(curves, incidence, motion);
    }

    /**
     * The same with a jet over its middle: up to twelve times as fast as the air around it, its edges inside strips, turned
     * down and swirling.
     */
    LiftingLineProblem blown(double incidence, Random jets) {
        SpanGrid grid = strips.grid();
        double faster = 11 * Math.pow(jets.nextDouble(), 2);
        double half = grid.span() / 2 * (0.05 + 0.5 * jets.nextDouble());
        double share = 0.4 + 0.6 * jets.nextDouble();
        double down = 0.3 * jets.nextDouble();
        double swirl = 0.25 * jets.nextDouble();
        double[] speeds = new double[grid.size()];
        double[] turned = new double[grid.size()];
        List<SectionCurve> sections = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            double y = Math.abs(grid.control(i));
            double cover = Math.max(0, Math.min(1, (half - y) / grid.width(i) + 0.5));
            speeds[i] = 1 + cover * faster;
            turned[i] = cover * (down + swirl * Math.signum(grid.control(i)));
            sections.add(cover == 0 ? curves.get(i) : new BlownCurve(curves.get(i), 1 - cover * (1 - share), cover));
        }
        return new LiftingLineProblem(sections, incidence, motion, Inflow.of(turned, speeds));
    }

    /** The wing's solver. */
    LiftingLineSolver solver() {
        return solver;
    }

    /** The wing's strips. */
    SpanGrid grid() {
        return strips.grid();
    }

    /** A circulation without sense: section lift between -4 and 4 on every strip, alike on both sides or not. */
    double[] anyCirculation() {
        SpanGrid grid = strips.grid();
        double[] start = new double[grid.size()];
        boolean alike = random.nextBoolean();
        for (int i = grid.size() - 1; i >= 0; i--) {
            boolean copied = alike && i < grid.size() / 2;
            start[i] = copied ? start[grid.mirror(i)] : between(-2, 2) * grid.chord(i);
        }
        return start;
    }

    /**
     * Sections that stall: each wing another airfoil, its curve changed by deflection and, a little, by Reynolds number.
     *
     * @param random asked once a wing
     */
    static SectionAerodynamics stallingSections(Random random) {
        double slope = 4.5 + 2 * random.nextDouble();
        double most = 0.9 + 0.6 * random.nextDouble();
        double least = -0.6 - 0.4 * random.nextDouble();
        double rounding = 0.02 + 0.3 * random.nextDouble();
        double fallen = 0.5 + 0.4 * random.nextDouble();
        return (place, surface, reynolds) -> {
            double helped = 0.6 * Math.sin(surface.deflection()) + 0.1 * Math.log(reynolds / 2e5);
            return new PeakCurve(
                    slope, -0.05 - 0.5 * surface.deflection(), most + helped, least + helped, rounding, fallen);
        };
    }

    /** Sections that stall, another one on every strip: worse than any wing. */
    static SectionAerodynamics unrelatedSections(Random random) {
        return (place, surface, reynolds) -> stallingSections(random).curve(place, surface, reynolds);
    }

    /** A library that knows one airfoil without measurements worth the name. */
    static AirfoilLibrary oneAirfoil() {
        PolarRun run = new PolarRun(PolarRun.Kind.DRAG, 2e5, 0, 0, "invented", "PRACTICE", List.of());
        Airfoil airfoil = new Airfoil(AIRFOIL.text(), "invented", 0.12, 0, 0, List.of(run));
        return new AirfoilLibrary() {
            @Override
            public Optional<Airfoil> find(AirfoilName name) {
                return Optional.of(airfoil);
            }

            @Override
            public List<String> names() {
                return List.of(airfoil.name());
            }
        };
    }
}
