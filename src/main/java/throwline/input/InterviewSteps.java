package throwline.input;

import static throwline.input.InterviewStep.choice;
import static throwline.input.InterviewStep.needed;
import static throwline.input.InterviewStep.open;
import static throwline.input.InterviewStep.usual;

import java.util.List;
import java.util.stream.Stream;

/** The questions of {@code throwline new} in their order. */
final class InterviewSteps {

    /** Answer to what the wing looks like of somebody who has the airfoil in a file. */
    static final String COORDINATES = "I have its coordinates in a file";

    private static final List<String> SHAPES = List.of(
            "flat underneath",
            "semi-symmetrical, slightly curved",
            "symmetrical, same both sides",
            "thin and cambered",
            COORDINATES);
    private static final List<String> EDGES =
            List.of("neither, both slant alike", "the leading edge", "the trailing edge");

    /** Answers to how wing and tail stand to each other. */
    static final String STRAIGHT = "straight, both parallel to the body";

    static final String AS_PLANNED = "at the angles that the plan gives";

    /** Answers to how much is told of hinges and travels. */
    static final String USUAL = "usual ones";

    static final String MEASURED = "I have measured them";

    private static final String NONE = "input.new.d.none";
    private static final String GUESSED = "input.new.d.guess";
    private static final String UNKNOWN = "input.new.d.unknown";

    private InterviewSteps() {}

    static List<InterviewStep> all() {
        return Stream.of(airframe(), hinges(), drive(), equipment(), moves())
                .flatMap(List::stream)
                .toList();
    }

    private static List<InterviewStep> airframe() {
        return List.of(
                needed("name", "name"),
                needed("span", "wing.sections.[].at"),
                needed("chord", "wing.sections.[].chord"),
                open("tip", "wing.sections.[].chord", "input.new.d.tip"),
                choice("edge", EDGES, "input.new.d.edge")
                        .when(a -> !a.text("tip").isEmpty()),
                choice("shape", SHAPES, ""),
                needed("coordinates", "wing.sections.[].airfoil").when(Interview::hasCoordinates),
                needed("thickness", "wing.sections.[].chord").when(a -> !a.hasCoordinates()),
                needed("position", "wing.position"),
                needed("weight", "packs.*.weight"),
                needed("balance", "packs.*.balance"),
                open("weight2", "packs.*.weight", NONE),
                needed("balance2", "packs.*.balance")
                        .when(a -> !a.text("weight2").isEmpty()),
                open("flaps.from", "wing.surfaces.*.from", NONE),
                needed("flaps.to", "wing.surfaces.*.to").when(Interview::hasFlaps),
                needed("ailerons.from", "wing.surfaces.*.from").when(a -> !a.hasFlaps()),
                open("ailerons.from2", "wing.surfaces.*.from", NONE).when(Interview::hasFlaps),
                needed("ailerons.to", "wing.surfaces.*.to").when(Interview::hasAilerons),
                needed("arm", "tail.arm"),
                needed("tail.span", "tail.span"),
                needed("tail.chord", "tail.chord"),
                open("tail.position", "tail.position", "input.new.d.tail"),
                choice("rigging", List.of(STRAIGHT, AS_PLANNED), UNKNOWN),
                needed("wing.incidence", "wing.incidence").when(Interview::isRiggedAsPlanned),
                needed("tail.incidence", "tail.incidence").when(Interview::isRiggedAsPlanned));
    }

    /** Chords, travels and the flaps' servo. */
    private static List<InterviewStep> hinges() {
        return List.of(
                choice("hinges", List.of(USUAL, MEASURED), "input.new.d.hinges"),
                open("flaps.chord", "wing.surfaces.*.chord", "input.new.d.quarter")
                        .when(a -> a.isMeasured() && a.hasFlaps()),
                open("flaps.down", "set-ups.*.*", "input.new.d.flaps").when(Interview::hasFlaps),
                open("ailerons.chord", "wing.surfaces.*.chord", "input.new.d.quarter")
                        .when(a -> a.isMeasured() && a.hasAilerons()),
                open("ailerons.up", "set-ups.*.*", "input.new.d.asked").when(a -> a.isMeasured() && a.hasAilerons()),
                needed("ailerons.down", "set-ups.*.*")
                        .when(a -> !a.text("ailerons.up").isEmpty()),
                open("elevator.chord", "tail.elevator.chord", "input.new.d.third")
                        .when(Interview::isMeasured),
                open("elevator.travel", "set-ups.*.*", "input.new.d.asked").when(Interview::isMeasured),
                open("servo", "servos.*.torque", NONE).when(Interview::hasFlaps),
                open("servo.arm", "servos.*.arm", GUESSED)
                        .when(a -> !a.text("servo").isEmpty()),
                needed("servo.horn", "servos.*.horn")
                        .when(a -> !a.text("servo.arm").isEmpty()));
    }

    /**
     * Propeller, motor and batteries; blades and batteries count only where the motor is known. A trim in cruise tells the
     * tail's angle where nobody knows it, at a speed that is told or that the motor holds.
     */
    private static List<InterviewStep> drive() {
        return List.of(
                open("propeller", "propeller.diameter", NONE),
                open("pitch", "propeller.pitch", GUESSED).when(Interview::hasPropeller),
                open("shut", "propeller.throttle shut", "input.new.d.shut").when(Interview::hasPropeller),
                open("kv", "motor.kv", UNKNOWN).when(Interview::hasPropeller),
                open("kind", "propeller.kind", UNKNOWN).when(Interview::hasMotor),
                open("cells", "packs.*.cells", UNKNOWN).when(Interview::hasMotor),
                open("capacity", "packs.*.capacity", GUESSED)
                        .when(a -> !a.text("cells").isEmpty()),
                open("cells2", "packs.*.cells", UNKNOWN)
                        .when(a -> a.hasMotor() && !a.text("weight2").isEmpty()),
                open("capacity2", "packs.*.capacity", GUESSED)
                        .when(a -> !a.text("cells2").isEmpty()),
                open("cruise", "tail.elevator.cruise", UNKNOWN)
                        .when(a -> a.text("rigging").isEmpty()),
                open("cruise.speed", "tail.elevator.cruise speed", UNKNOWN)
                        .when(a ->
                                !a.text("cruise").isEmpty() && a.text("cells").isEmpty()));
    }

    private static List<InterviewStep> equipment() {
        return List.of(
                open("wheels", "wheels.diameter", NONE),
                open("length", "body.length", GUESSED),
                open("width", "body.width", GUESSED),
                open("height", "body.height", GUESSED));
    }

    /** Set-ups and sticks; the usual throws depend on all before. */
    private static List<InterviewStep> moves() {
        return List.of(
                usual("takeoff", "set-ups.take-off flap.flaps").when(Interview::hasFlaps),
                usual("landing", "set-ups.landing flap.flaps").when(Interview::hasFlaps),
                usual("brake.flaps", "set-ups.airbrake.flaps").when(Interview::hasFlaps),
                usual("brake.ailerons", "set-ups.airbrake.ailerons").when(Interview::brakesWithAilerons),
                usual("roll.up", "sticks.rates.ailerons.up").when(Interview::hasAilerons),
                usual("roll.down", "sticks.rates.ailerons.down").when(a -> a.hasAilerons() && !a.isNone("roll.up")),
                open("roll.flaps", "set-ups.*.*", NONE).when(a -> a.rollsWithAilerons() && a.hasFlaps()),
                usual("pull", "sticks.full up.elevator"),
                open("pull.flaps", "set-ups.*.*", NONE).when(a -> a.hasFlaps() && !a.isNone("pull")));
    }
}
