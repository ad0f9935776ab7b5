package throwline.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import throwline.section.Airfoil;
import throwline.section.AirfoilShape;
import throwline.section.SectionAerodynamics;
import throwline.section.SectionCurve;
import throwline.section.SectionPlace;
import throwline.section.SurfaceState;
import throwline.section.boundary.ProfileLayers;
import throwline.section.computed.SectionRange;
import throwline.section.computed.SectionTraits;
import throwline.section.contour.Contour;
import throwline.section.contour.PanelFlow;
import throwline.section.contour.PanelNodes;

/** "What does the air do along this outline?": pressure and boundary layer at a few angles short of the stall. */
public final class FlowStudy {

    /** Angles are whole multiples of this, and at most so many, degrees. */
    private static final int STEP = 4;

    private static final int MOST = 4;

    /** Surfaces moved further are beyond the method (methods manual 3.12). */
    private static final double MOST_MOVED = Math.toRadians(10) + 1e-9;

    private final SectionAerodynamics sections;
    private final ProfileLayers.Method layers = new ProfileLayers.Method();

    /**
     * @param sections makes section curves
     */
    public FlowStudy(SectionAerodynamics sections) {
        this.sections = sections;
    }

    /**
     * The air along a section.
     *
     * @param airfoil its airfoil
     * @param surface its hinged surface
     * @param reynolds Reynolds number on the chord
     * @return rising angle; empty where the outline is not known, or one of the three is outside what the method is meant for
     */
    public List<SectionFlow> flows(Airfoil airfoil, SurfaceState surface, double reynolds) {
        Optional<AirfoilShape> shape = airfoil.shape()
                .filter(outline -> Math.abs(surface.deflection()) <= MOST_MOVED)
                .filter(outline -> SectionTraits.of(outline)
                        .filter(traits -> SectionRange.holds(traits, reynolds))
                        .isPresent());
        if (shape.isEmpty()) {
            return List.of();
        }
        Contour contour = Contour.of(shape.get()).deflected(surface.chordFraction(), surface.deflection());
        PanelFlow flow = new PanelFlow(contour);
        SectionCurve curve = sections.curve(SectionPlace.of(airfoil), surface, reynolds);
        return IntStream.rangeClosed(-90 / STEP, 90 / STEP)
                .mapToObj(i -> Math.toRadians(STEP * i))
                .filter(angle -> angle >= curve.zeroLiftAngle() && angle < curve.stallAngle())
                .limit(MOST)
                .map(angle -> at(flow, angle, curve.lift(angle), reynolds))
                .toList();
    }

    /** The boundary layer takes some lift at an angle: the flow is that with the lift which is left. */
    private SectionFlow at(PanelFlow flow, double angle, double lift, double reynolds) {
        double free = flow.angleOf(lift);
        ProfileLayers found = layers.of(flow, free, reynolds);
        double[] speeds = flow.speeds(free);
        return new SectionFlow(
                angle,
                lift,
                new SectionFlow.Side(found.overTop(), stations(flow.nodes(), speeds, 1)),
                new SectionFlow.Side(found.alongBottom(), stations(flow.nodes(), speeds, -1)));
    }

    private static List<SectionFlow.Station> stations(PanelNodes nodes, double[] speeds, int way) {
        int nose = nodes.panels() / 2;
        return IntStream.rangeClosed(0, nose)
                .map(k -> nose + way * k)
                .mapToObj(i -> new SectionFlow.Station(nodes.x(i), nodes.y(i), 1 - speeds[i] * speeds[i]))
                .toList();
    }
}
