package throwline.liftingline;

/**
 * The shape of one lifting surface seen from above, from the middle to the right tip; the left side mirrors it. All
 * distances in metres, all angles in radians, {@code y} from 0 to {@link #semiSpan()}.
 */
public interface Planform {

    /** Half the span, m. */
    double semiSpan();

    /** Distances from the middle at which the outline bends, rising, without 0 and without the tip. */
    double[] breaks();

    /** Chord, m, positive inside the tip. */
    double chord(double y);

    /** Incidence against the chord at the middle, rad, nose up positive (washout is negative). */
    double twist(double y);

    /** Quarter chord behind the quarter chord at the middle, m. */
    double quarterChord(double y);

    /** Sweep of the quarter-chord line, rad, backwards positive. */
    double sweep(double y);

    /** Rise of each half, rad. */
    double dihedral();
}
