package throwline.model;

/**
 * The battery of a pack as the motor sees it.
 *
 * @param cells lithium-polymer cells in series
 * @param capacity A s
 */
public record Battery(int cells, double capacity) {

    /** Share of a battery that is flown (PRACTICE, methods manual 20.13). */
    public static final double USABLE = 0.8;
}
