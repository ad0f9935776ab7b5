package throwline.model;

/**
 * The battery of a pack as the motor sees it.
 *
 * @param cells lithium-polymer cells in series
 * @param capacity A s
 */
public record Battery(int cells, double capacity) {

    /** {@inheritDoc} Written out: what Java makes for a record when it is first asked takes the start of the program a millisecond. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Battery battery
                && cells == battery.cells
                && Double.compare(capacity, battery.capacity) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * cells + Double.hashCode(capacity);
    }

    /** Share of a battery that is flown (PRACTICE, methods manual 20.13). */
    public static final double USABLE = 0.8;
}
