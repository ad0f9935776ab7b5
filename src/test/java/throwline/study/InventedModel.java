package throwline.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.model.AirfoilName;
import throwline.model.Body;
import throwline.model.Elevator;
import throwline.model.Field;
import throwline.model.Hinge;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.model.SetUp;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.TailPosition;
import throwline.model.Wing;
import throwline.model.WingSection;
import throwline.section.Airfoil;
import throwline.section.AirfoilLibrary;
import throwline.section.PolarRun;
import throwline.section.SectionAerodynamics;

/** An invented model round a given wing, with set-ups that move its surfaces. */
final class InventedModel {

    static final SetUp CLEAN = new SetUp("clean", Map.of(), 0);

    private static final AirfoilName AIRFOIL = new AirfoilName("invented");

    private InventedModel() {}

    /** A wing with straight taper about a straight quarter chord. */
    static Wing tapered(double span, double aspect, double taper, double washout, List<Surface> surfaces) {
        double root = 2 * span / (aspect * (1 + taper));
        WingSection middle = new WingSection(0, root, AIRFOIL, 0, 0);
        WingSection tip = new WingSection(span / 2, root * taper, AIRFOIL, washout, root * (1 - taper) / 4);
        return new Wing(0, 0, 0, List.of(middle, tip), surfaces);
    }

    static Surface surface(String name, double from, double to, double travel) {
        return new Surface(name, from, to, 0.25, travel, travel, Hinge.TAPED);
    }

    static Model with(Wing wing) {
        Elevator elevator = new Elevator(0.35, 0.35, 0.35, Hinge.TAPED);
        return new Model(
                "invented",
                List.of(new Pack("pack", 2.5, 0.08)),
                wing,
                new Tail(0.6, 0.18, 0.9, 0, 0, TailPosition.ON_THE_BODY, AIRFOIL, elevator),
                new Body(1.3, 0.12, 0.14, 0.3, true),
                Optional.empty(),
                Optional.empty(),
                new Field(Field.Ground.HARD, OptionalDouble.empty(), 0, 0, OptionalDouble.empty(), 0),
                List.of(CLEAN),
                List.of());
    }

    /** A library that knows one airfoil without measurements worth the name. */
    static AirfoilLibrary airfoils() {
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

    /** Sections of theory: lift slope 2 pi, zero lift shifted by half the deflection. */
    static SectionAerodynamics theory() {
        return (place, surface, reynolds) -> throwline.liftingline.LawCurve.linear(surface.deflection() / 2);
    }
}
