package throwline.flight;

import throwline.air.Gravity;

/**
 * A round-out at constant speed and constant load: an arc of a circle (mechanics; methods manual 10.2).
 *
 * @param speed m/s
 * @param load lift over weight at the bottom, above 1
 */
record FlareArc(double speed, double load) {

    double radius() {
        return speed * speed / (Gravity.STANDARD * (load - 1));
    }

    /** Height used from a path this far below the horizon until level, m. */
    double height(double angle) {
        return radius() * (1 - Math.cos(angle));
    }

    /** Distance over the ground, m. */
    double distance(double angle) {
        return radius() * Math.sin(angle);
    }
}
