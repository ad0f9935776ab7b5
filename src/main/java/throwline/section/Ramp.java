package throwline.section;

/** A smooth step from 0 to 1. */
final class Ramp {

    private Ramp() {}

    /** 0 up to 0, 1 from 1 on, a cubic without corners between. */
    static double smooth(double t) {
        if (t <= 0) {
            return 0;
        }
        return t >= 1 ? 1 : t * t * (3 - 2 * t);
    }
}
