package throwline.flight;

import java.util.ArrayList;
import java.util.List;
import throwline.model.Body;
import throwline.model.Model;
import throwline.model.Propeller;
import throwline.model.Wheels;

/**
 * Drag of body, fin, undercarriage and propeller with the throttle shut, by the build-up of the methods manual 8.1 to 8.3.
 * Coefficients without another source are from memory or common practice, as marked there; the whole is no better than a
 * quarter either way (the one complete model that was measured stands in the validation cases).
 */
final class DragItems {

    /** Boxy body with a blunt nose, on frontal area: 0.3 to 0.5 (MEMORY/PRACTICE). */
    private static final double BOXY_BODY = 0.40;

    /** Bare wheel on diameter times width: 0.25 to 0.5 (MEMORY). */
    private static final double WHEEL = 0.35;

    /** Share of an undercarriage's whole drag that is fittings and interference (READ, NACA TR 485: 44 per cent). */
    private static final double FITTINGS_SHARE = 0.44;

    /** Flat plate across the stream, for blades held still (MEMORY). */
    private static final double BLADE_PLATE = 1.1;

    /** Blade chord over diameter of a common model propeller: 24 mm at 330 mm (PRACTICE, methods manual 8.3). */
    private static final double BLADE_CHORD = 24.0 / 330;

    /** Blade area over span times largest chord, hub and tip taken off; gives the worked figure of the methods manual 8.3. */
    private static final double BLADE_FILL = 0.79;

    /** Turning propeller on its disc: 0.05 coarse to 0.2 fine (MEMORY, half either way). */
    private static final double TURNING = 0.1;

    /** Fin and rudder over the tail's area, and their drag on their own area (PRACTICE). */
    private static final double FIN_AREA = 0.5;

    private static final double FIN_DRAG = 0.015;

    private final Model model;
    private final double reynoldsPerMetre;

    /**
     * @param model the model
     * @param reynoldsPerMetre Reynolds number per metre at a typical speed, for skin friction
     */
    DragItems(Model model, double reynoldsPerMetre) {
        this.model = model;
        this.reynoldsPerMetre = reynoldsPerMetre;
    }

    List<DragItem> all() {
        List<DragItem> items = new ArrayList<>();
        items.add(new DragItem("body", body(model.body()), 0, DragItem.Part.BODY));
        items.add(new DragItem(
                "fin", FIN_AREA * FIN_DRAG * model.tail().area(), model.body().height() / 2, DragItem.Part.FIN));
        model.wheels().ifPresent(w -> items.add(wheels(w)));
        model.propeller()
                .ifPresent(
                        p -> items.add(new DragItem("propeller", propeller(p), p.height(), DragItem.Part.PROPELLER)));
        return List.copyOf(items);
    }

    private double body(Body body) {
        double frontal = body.width() * body.height();
        if (body.boxy()) {
            return BOXY_BODY * frontal;
        }
        double diameter = Math.sqrt(4 * frontal / Math.PI);
        double fineness = body.length() / diameter;
        double form = 1 + 60 / Math.pow(fineness, 3) + fineness / 400;
        double friction = 0.455 / Math.pow(Math.log10(reynoldsPerMetre * body.length()), 2.58);
        double wetted = 0.75 * Math.PI * diameter * body.length();
        return friction * form * wetted;
    }

    private DragItem wheels(Wheels wheels) {
        double leg =
                switch (wheels.legs()) {
                    case SHEET -> 1.2;
                    case WIRE -> 1.15;
                    case FAIRED -> 0.15;
                    case NONE -> 0;
                };
        double each = WHEEL * wheels.diameter() * wheels.width() + leg * wheels.legLength() * wheels.legWidth();
        double area = wheels.count() * each / (1 - FITTINGS_SHARE);
        return new DragItem(
                "wheels", area, -(model.body().height() / 2 + 0.6 * wheels.legLength()), DragItem.Part.WHEELS);
    }

    /** Drag of the propeller with the throttle shut over dynamic pressure, m^2. */
    static double propeller(Propeller propeller) {
        double diameter = propeller.diameter();
        return switch (propeller.shut()) {
            case FOLDED -> 0;
            case TURNING -> TURNING * Math.PI * diameter * diameter / 4;
            case STOPPED -> {
                double twist = Math.atan(propeller.pitch() / (0.7 * Math.PI * diameter));
                double blades = propeller.blades() * diameter / 2 * BLADE_CHORD * diameter * BLADE_FILL;
                yield BLADE_PLATE * Math.pow(Math.cos(twist), 2) * blades;
            }
        };
    }
}
