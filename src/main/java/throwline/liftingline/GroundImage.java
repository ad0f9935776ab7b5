package throwline.liftingline;

import java.util.Arrays;

/**
 * The image of the bound vortex below the ground. It takes speed from the air at the lifting line, and turns it up at the
 * three-quarter chord. Both are taken from a circulation that is already known, so that the matrix keeps its dominance.
 */
final class GroundImage {

    private final SpanGrid grid;
    private final Ground ground;
    private final double[] loss;
    private final double[] upwash;

    GroundImage(SpanGrid grid, Ground ground) {
        this.grid = grid;
        this.ground = ground;
        loss = new double[grid.size()];
        upwash = new double[grid.size()];
    }

    boolean acts() {
        return ground.isNear() && ground.boundImages();
    }

    double lastLoss(int strip) {
        return loss[strip];
    }

    double lastUpwash(int strip) {
        return upwash[strip];
    }

    void reset() {
        Arrays.fill(loss, 0);
        Arrays.fill(upwash, 0);
    }

    void update(int strip, double[] circulation) {
        double apart = 2 * ground.height();
        double back = grid.chord(strip) / 2;
        double y = grid.control(strip);
        double slowed = 0;
        double turned = 0;
        for (int j = 0; j < circulation.length; j++) {
            double left = y - grid.edge(j);
            double right = y - grid.edge(j + 1);
            slowed += circulation[j] * segment(left, right, apart) / apart;
            double distance = Math.hypot(apart, back);
            turned += circulation[j] * segment(left, right, distance) * back / (distance * distance);
        }
        loss[strip] = slowed;
        upwash[strip] = turned;
    }

    /** Biot-Savart factor of a straight segment at a distance from its line, without the 1/distance. */
    private static double segment(double left, double right, double distance) {
        return (left / Math.hypot(left, distance) - right / Math.hypot(right, distance)) / (4 * Math.PI);
    }
}
