package throwline.model;

import java.util.Optional;
import throwline.units.Key;

/**
 * Mass and balance of the whole model with one battery.
 *
 * @param name what its owner calls it
 * @param mass all-up mass, kg
 * @param balance balance point behind the wing's leading edge at the middle, m
 * @param battery what drives the motor; empty where nothing is known of it
 */
public record Pack(
        String name,
        @Key("weight") double mass,
        double balance,
        @Key(Key.NONE) Optional<Battery> battery) {

    /** A pack of whose battery nothing is known. */
    public Pack(String name, double mass, double balance) {
        this(name, mass, balance, Optional.empty());
    }

    /** The same battery in a model of another mass, kg, and balance, m. */
    public Pack weighing(double otherMass, double otherBalance) {
        return new Pack(name, otherMass, otherBalance, battery);
    }
}
