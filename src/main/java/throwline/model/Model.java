package throwline.model;

import java.util.List;
import java.util.Optional;

/**
 * Aeroplane with everything that a study needs to know about it.
 *
 * @param name what its owner calls it
 * @param packs the batteries it flies with, at least one
 * @param wing the wing
 * @param tail the horizontal tail
 * @param body the fuselage
 * @param wheels the undercarriage; empty where there is none
 * @param propeller the propeller; empty on a glider without motor
 * @param field where it flies
 * @param setUps where the surfaces stand, steady; at least two, the first is the one that others are compared with
 * @param sticks what full stick adds to a set-up
 * @param servos what is known of servos and linkages, in any order; a surface may lack one
 * @param motor what turns the propeller; empty where nothing is known of it
 */
public record Model(
        String name,
        List<Pack> packs,
        Wing wing,
        Tail tail,
        Body body,
        Optional<Wheels> wheels,
        Optional<Propeller> propeller,
        Field field,
        List<SetUp> setUps,
        List<Stick> sticks,
        List<Servo> servos,
        Optional<Motor> motor) {

    public Model {
        packs = List.copyOf(packs);
        setUps = List.copyOf(setUps);
        sticks = List.copyOf(sticks);
        servos = List.copyOf(servos);
        if (packs.isEmpty() || setUps.isEmpty()) {
            throw new IllegalArgumentException("a model needs a pack and a set-up");
        }
    }

    /** A model of whose motor nothing is known. */
    public Model(
            String name,
            List<Pack> packs,
            Wing wing,
            Tail tail,
            Body body,
            Optional<Wheels> wheels,
            Optional<Propeller> propeller,
            Field field,
            List<SetUp> setUps,
            List<Stick> sticks,
            List<Servo> servos) {
        this(name, packs, wing, tail, body, wheels, propeller, field, setUps, sticks, servos, Optional.empty());
    }

    /** A model of whose servos and motor nothing is known. */
    public Model(
            String name,
            List<Pack> packs,
            Wing wing,
            Tail tail,
            Body body,
            Optional<Wheels> wheels,
            Optional<Propeller> propeller,
            Field field,
            List<SetUp> setUps,
            List<Stick> sticks) {
        this(name, packs, wing, tail, body, wheels, propeller, field, setUps, sticks, List.of());
    }

    /** The same model with another propeller. */
    public Model with(Propeller other) {
        return new Model(
                name, packs, wing, tail, body, wheels, Optional.of(other), field, setUps, sticks, servos, motor);
    }

    /** True where enough is known to fly it with the motor running with this battery. */
    public boolean isPowered(Pack pack) {
        return propeller.isPresent()
                && pack.battery().isPresent()
                && motor.map(m -> m.speedConstant().isPresent()
                                || m.bench().watts().isPresent())
                        .orElse(false);
    }

    /** The same model with other set-ups, at least one. */
    public Model withSetUps(List<SetUp> others) {
        return new Model(name, packs, wing, tail, body, wheels, propeller, field, others, sticks, servos, motor);
    }

    /** The same model with other sticks. */
    public Model withSticks(List<Stick> others) {
        return new Model(name, packs, wing, tail, body, wheels, propeller, field, setUps, others, servos, motor);
    }

    /** The same model with another tail. */
    public Model with(Tail other) {
        return new Model(name, packs, wing, other, body, wheels, propeller, field, setUps, sticks, servos, motor);
    }

    /** Chord behind the hinge of a surface of the wing, by its name, or of the elevator, where its throws are measured, m. */
    public double throwChord(String surface) {
        return wing.surface(surface).map(wing::throwChord).orElseGet(tail::throwChord);
    }

    /** The servo of a surface; one of which nothing is known where the model does not say. */
    public Servo servo(String surface) {
        return servos.stream()
                .filter(s -> s.surface().equals(surface))
                .findFirst()
                .orElseGet(() -> Servo.unknown(surface));
    }

    /** The set-up that others are compared with: the one that moves nothing, else the first. */
    public SetUp reference() {
        return setUps.stream().filter(SetUp::isClean).findFirst().orElse(setUps.get(0));
    }

    /** True where a set-up of this model is the one that others are compared with; set-ups have names of their own. */
    public boolean isReference(SetUp setUp) {
        return setUp.name().equals(reference().name());
    }
}
