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
import throwline.model.Propeller;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.model.Surface;
import throwline.model.Tail;
import throwline.model.TailPosition;
import throwline.model.Wheels;
import throwline.model.Wing;
import throwline.model.WingSection;

/** An invented model of usual proportions: 1.8 m span, straight wing, high wing. */
final class UsualModel {

    private static final double DEGREE = Math.PI / 180;

    private UsualModel() {}

    static Model make() {
        AirfoilName airfoil = new AirfoilName("clark-y");
        Wing wing = new Wing(
                0.06,
                0,
                2 * DEGREE,
                List.of(new WingSection(0, 0.27, airfoil, 0, 0), new WingSection(0.9, 0.27, airfoil, 0, 0)),
                List.of(
                        new Surface("flaps", 0.07, 0.45, 0.25, 0, 60 * DEGREE, Hinge.TAPED),
                        new Surface("ailerons", 0.46, 0.86, 0.25, 25 * DEGREE, 18 * DEGREE, Hinge.TAPED)));
        Tail tail = new Tail(
                0.55,
                0.17,
                0.8,
                -0.06,
                0,
                TailPosition.ON_THE_BODY,
                airfoil,
                new Elevator(0.35, 20 * DEGREE, 20 * DEGREE, Hinge.TAPED));
        return new Model(
                "usual",
                List.of(new Pack("small", 3, 0.078), new Pack("large", 3.4, 0.074)),
                wing,
                tail,
                new Body(1.25, 0.13, 0.15, 0.28, true),
                Optional.of(new Wheels(2, 0.09, 0.028, Wheels.Legs.SHEET, 0.17, 0.004)),
                Optional.of(new Propeller(0.355, 0.18, 2, Propeller.Shut.STOPPED, 0)),
                new Field(Field.Ground.SHORT_GRASS, OptionalDouble.empty(), 0, 0, OptionalDouble.empty(), 0),
                List.of(new SetUp("clean", Map.of(), 0), new SetUp("landing", Map.of("flaps", 35 * DEGREE), 0)),
                List.of(
                        new Stick.Roll(
                                "rates", Map.of("ailerons", new Stick.Throws(12 * DEGREE, 10 * DEGREE)), List.of()),
                        new Stick.Pull("full up", Map.of(), -14 * DEGREE, List.of())));
    }
}
