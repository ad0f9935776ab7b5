package throwline.logs;

import java.util.List;
import throwline.logs.Piece.Kind;
import throwline.logs.Piece.Reason;

/**
 * Stalls of a set-up that lie further above its lowest one than chance has them: broken off before the nose dropped by
 * itself, as nothing stalls too slowly. Methods manual 22.5.
 */
public final class StallSpread {

    /** One stall: m/s, and as a share of it; by ground speed gusts besides (PRACTICE). */
    private static final double STALL = 0.20;

    private static final double STALL_SHARE = 0.02;
    private static final double GUST = 0.10;
    private static final double GUST_SHARE = 0.12;

    /** Range over standard deviation that two to ten normal values exceed one time in a hundred (studentised range, tables). */
    private static final double[] RANGE = {3.64, 4.12, 4.40, 4.60, 4.76, 4.88, 4.99, 5.08, 5.16};

    private final boolean bySensor;
    private final double wind;

    /**
     * @param bySensor true where airspeeds come from a sensor
     * @param wind m/s
     */
    public StallSpread(boolean bySensor, double wind) {
        this.bySensor = bySensor;
        this.wind = wind;
    }

    /** Standard deviation of one stall of such a speed, m/s. */
    public double sd(double speed) {
        double gust = bySensor ? 0 : GUST + GUST_SHARE * wind;
        return Math.hypot(Math.hypot(STALL, STALL_SHARE * speed), gust);
    }

    /** Pieces, of which, where a sensor told airspeeds and gusts do not blur them, those stalls are rejected that lie too far above the lowest of their set-up. */
    List<Piece> checked(List<Piece> pieces) {
        return pieces.stream()
                .map(piece -> isTooFast(piece, pieces) ? piece.because(Reason.BROKEN_OFF) : piece)
                .toList();
    }

    private boolean isTooFast(Piece piece, List<Piece> pieces) {
        if (!bySensor || !isStall(piece)) {
            return false;
        }
        double[] same = pieces.stream()
                .filter(p -> isStall(p) && p.setUp().equals(piece.setUp()))
                .mapToDouble(Piece::value)
                .sorted()
                .toArray();
        return same.length > 1
                && piece.value() - same[0] > RANGE[Math.min(same.length - 2, RANGE.length - 1)] * sd(same[0]);
    }

    private static boolean isStall(Piece piece) {
        return piece.used() && piece.kind() == Kind.STALL;
    }
}
