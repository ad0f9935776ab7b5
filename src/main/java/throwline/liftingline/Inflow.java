package throwline.liftingline;

import java.util.Arrays;

/** The air that other surfaces send to each strip. */
public final class Inflow {

    private final double[] downwash;
    private final double[] speed;

    private Inflow(double[] downwash, double[] speed) {
        this.downwash = downwash;
        this.speed = speed;
    }

    /** Clean air on this many strips. */
    public static Inflow clean(int strips) {
        double[] speed = new double[strips];
        Arrays.fill(speed, 1);
        return new Inflow(new double[strips], speed);
    }

    /**
     * Disturbed air.
     *
     * @param downwash angle by which the air goes down at each strip, rad
     * @param speed local air speed over the reference speed at each strip, positive
     */
    public static Inflow of(double[] downwash, double[] speed) {
        if (downwash.length != speed.length) {
            throw new IllegalArgumentException(downwash.length + " angles, " + speed.length + " speeds");
        }
        return new Inflow(downwash.clone(), speed.clone());
    }

    /** Number of strips. */
    public int size() {
        return speed.length;
    }

    /** Downwash angle at a strip, rad. */
    public double downwash(int strip) {
        return downwash[strip];
    }

    /** Air speed at a strip over the reference speed. */
    public double speed(int strip) {
        return speed[strip];
    }
}
