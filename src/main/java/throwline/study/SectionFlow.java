package throwline.study;

import java.util.List;
import java.util.OptionalDouble;
import throwline.section.boundary.LayerStretch;
import throwline.section.boundary.LayerStretch.Kind;
import throwline.units.Dimension;
import throwline.units.Measure;

/**
 * Air along the outline of a section at one angle, computed from the outline alone.
 *
 * @param angle of attack, rad
 * @param lift lift coefficient there, at which the flow without friction was taken
 * @param top upper surface
 * @param bottom lower surface
 */
public record SectionFlow(@Measure(Dimension.ANGLE) double angle, double lift, Side top, Side bottom) {

    /**
     * One surface, from the nose to the trailing edge.
     *
     * @param layers kinds of boundary layer
     * @param pressures without friction
     */
    public record Side(List<LayerStretch> layers, List<Station> pressures) {

        public Side {
            layers = List.copyOf(layers);
            pressures = List.copyOf(pressures);
        }

        /** End of the laminar stretch, share of the chord. */
        public double laminarTo() {
            return end(Kind.LAMINAR).orElse(0);
        }

        /** Rear end of a bubble; empty without one. */
        public OptionalDouble bubbleTo() {
            return end(Kind.BUBBLE);
        }

        /** Where the flow leaves the surface for good; empty where it does not. */
        public OptionalDouble offFrom() {
            return layers.stream()
                    .filter(stretch -> stretch.layer() == Kind.SEPARATED)
                    .mapToDouble(LayerStretch::from)
                    .findFirst();
        }

        private OptionalDouble end(Kind kind) {
            return layers.stream()
                    .filter(stretch -> stretch.layer() == kind)
                    .mapToDouble(LayerStretch::to)
                    .findFirst();
        }
    }

    /**
     * Place on the outline.
     *
     * @param x behind the nose, chords
     * @param y above the chord line, chords
     * @param pressure coefficient: 1 at rest, 0 as far away, negative where the air is faster
     */
    public record Station(double x, double y, double pressure) {}
}
