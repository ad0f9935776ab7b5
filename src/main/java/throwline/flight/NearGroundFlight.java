package throwline.flight;

import throwline.air.Gravity;

/**
 * Point of weight close to the ground: constants that all legs of a landing share.
 *
 * @param mass kg
 * @param area reference area of the coefficients, m^2
 * @param density kg/m^3
 * @param stance height of the wing above the wheels, m; the wind is taken there
 * @param polar drag and most lift by height
 * @param wind headwind
 */
record NearGroundFlight(
        double mass, double area, double density, double stance, NearGroundPolar polar, WindProfile wind) {

    double weight() {
        return mass * Gravity.STANDARD;
    }

    /** Dynamic pressure times area, N. */
    double pressureArea(double speed) {
        return density * speed * speed * area / 2;
    }

    /** Speed at which a lift coefficient carries the weight, m/s. */
    double speedFor(double lift) {
        return Math.sqrt(2 * weight() / (density * area * lift));
    }

    /** Headwind at the wing with the wheels at a height, m/s. */
    double windAt(double height) {
        return wind.at(height + stance);
    }

    /** Change of the headwind over height there, 1/s. */
    double windGradient(double height) {
        return wind.gradient(height + stance);
    }

    /** The same model in another wind. */
    NearGroundFlight in(WindProfile other) {
        return new NearGroundFlight(mass, area, density, stance, polar, other);
    }
}
