package throwline.flight;

import throwline.liftingline.Ground;
import throwline.liftingline.Inflow;
import throwline.liftingline.SpanGrid;
import throwline.liftingline.StripForces;
import throwline.liftingline.SunkSheet;
import throwline.liftingline.WakeSheet;
import throwline.model.Model;
import throwline.model.TailPosition;

/**
 * Air of the wing at the tail: downwash from the wing's own circulation with the sunken sheet, and the loss
 * of speed in its wake (half-width and centre loss after NACA Reports 648 and 651, from memory; methods manual 7.1).
 */
final class TailWake {

    /** The formula for the loss passes 1 close behind a stalled section; no wake is that dead at a tail. */
    private static final double MOST_LOST = 0.9;

    /** Nearest distance of the tail over the farthest, both along the air, at the angles of attack that are flown. */
    private static final double USUAL = 0.75;

    /**
     * Least core of a trailing vortex over the chord: the half-width of the wake of a clean section some three chords behind
     * it. A core as wide as a strip would let the answer depend on where strips end. Each vortex lies as high and is as thick as
     * the wake of the strips that it leaves.
     */
    private static final double CORE = 0.15;

    private final Model model;
    private final SpanGrid tailGrid;
    private final Ground ground;
    private final double back;
    private final SunkSheet sunk;

    /**
     * @param model the model
     * @param grid the wing's strips
     * @param tailGrid the tail's strips
     * @param ground the ground below the wing
     */
    TailWake(Model model, SpanGrid grid, SpanGrid tailGrid, Ground ground) {
        this.model = model;
        this.tailGrid = tailGrid;
        this.ground = ground;
        back = model.tail().arm() + (model.tail().chord() - model.wing().chordAt(0)) / 4;
        double farthest = Math.hypot(back, model.tail().height());
        double y = tailGrid.control(tailGrid.size() * 3 / 4);
        double chord = model.wing().chordAt(0);
        sunk = new SunkSheet(grid, ground, Math.max(USUAL * farthest, chord), farthest, y, CORE * chord);
    }

    /**
     * The air at the tail.
     *
     * @param wing forces of the wing
     * @param alpha angle of attack of the body's axis, rad
     * @param trailingEdgeDrop trailing edge of the moved surface below the chord line, over chord, at each wing strip
     */
    TailAir at(StripForces wing, double alpha, double[] trailingEdgeDrop) {
        SpanGrid grid = wing.solution().grid();
        WakeSheet sheet = new WakeSheet(wing.solution(), ground);
        double up = model.tail().height();
        double x = back * Math.cos(alpha) + up * Math.sin(alpha);
        double z = up * Math.cos(alpha) - back * Math.sin(alpha);
        double level = z + sunk.at(sheet, x);
        double edgeDrop = 0.75 * Math.sin(alpha + model.wing().incidence());
        double[] above = new double[grid.size()];
        double[] core = new double[grid.size()];
        for (int k = 0; k < grid.size(); k++) {
            double chord = grid.chord(k);
            above[k] = level + chord * (edgeDrop + trailingEdgeDrop[k]);
            core[k] = Math.max(CORE, halfWidth(wing.sectionDrag(k), behind(x, chord))) * chord;
        }
        double[] aboveEdges = atEdges(above);
        double[] coreEdges = atEdges(core);
        int n = tailGrid.size();
        double[] downwash = new double[n];
        double[] speed = new double[n];
        boolean inWake = false;
        double own = bodyFactor(model.tail().position());
        for (int i = 0; i < n / 2; i++) {
            double y = tailGrid.control(i);
            int strip = stripAt(grid, y);
            double chord = grid.chord(strip);
            double behind = behind(x, chord);
            double halfWidth = halfWidth(wing.sectionDrag(strip), behind) * chord;
            downwash[i] = sheet.downwash(x, y, aboveEdges, z, coreEdges);
            double loss = 0;
            if (Math.abs(above[strip]) < halfWidth) {
                inWake = true;
                double shape = Math.pow(Math.cos(Math.PI * above[strip] / (2 * halfWidth)), 2);
                loss = Math.min(MOST_LOST, centreLoss(wing.sectionDrag(strip), behind)) * shape;
            }
            speed[i] = Math.sqrt(Math.min(own, 1 - loss));
            downwash[n - 1 - i] = downwash[i];
            speed[n - 1 - i] = speed[i];
        }
        return new TailAir(Inflow.of(downwash, speed), inWake);
    }

    /** Way behind a trailing edge, in chords; 0 ahead of it. */
    private static double behind(double x, double chord) {
        return Math.max(0, (x - 0.75 * chord) / chord);
    }

    /** Means of the strips either side of each edge; the outermost strips' own at the tips. */
    private static double[] atEdges(double[] strips) {
        double[] edges = new double[strips.length + 1];
        for (int k = 0; k < edges.length; k++) {
            edges[k] = (strips[Math.max(0, k - 1)] + strips[Math.min(strips.length - 1, k)]) / 2;
        }
        return edges;
    }

    /** Half-width of a wake over the chord, for a section drag coefficient, so many chords behind the trailing edge. */
    static double halfWidth(double drag, double behind) {
        return 0.68 * Math.sqrt(drag * (behind + 0.15));
    }

    /** Share of the dynamic pressure lost in the middle of a wake. */
    static double centreLoss(double drag, double behind) {
        return 2.42 * Math.sqrt(drag) / (behind + 0.30);
    }

    private static int stripAt(SpanGrid grid, double y) {
        int strip = 0;
        while (strip < grid.size() - 1 && grid.edge(strip + 1) < y) {
            strip++;
        }
        return strip;
    }

    /** Dynamic pressure left by the body's wake (PRACTICE, methods manual 7.1). */
    private static double bodyFactor(TailPosition position) {
        return switch (position) {
            case ON_THE_BODY -> 0.90;
            case ON_THE_FIN -> 0.95;
            case ON_TOP_OF_THE_FIN -> 1.0;
        };
    }

    /**
     * The air at the tail.
     *
     * @param inflow downwash and speed at each strip of the tail
     * @param inWake true where part of the tail lies in the wing's wake
     */
    record TailAir(Inflow inflow, boolean inWake) {}
}
