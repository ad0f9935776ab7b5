package throwline.section;

/**
 * Effect of a deflected surface on a section, to be added to its curve.
 *
 * @param zeroLift shift of the zero-lift angle, turned positive for a surface down, rad
 * @param maxLift rise of maximum lift and of the lower stall's lift
 * @param drag drag of the separated flow on the surface; negative where less than what was measured is expected
 * @param moment quarter-chord moment coefficient
 */
record FlapEffect(double zeroLift, double maxLift, double drag, double moment) {

    static final FlapEffect NONE = new FlapEffect(0, 0, 0, 0);

    /** True where nothing tells it from another. */
    boolean isAs(FlapEffect other) {
        return zeroLift == other.zeroLift && maxLift == other.maxLift && drag == other.drag && moment == other.moment;
    }

    /** This effect beyond that of another deflection or chord; its drag may be less. */
    FlapEffect beyond(FlapEffect measured) {
        return new FlapEffect(
                zeroLift - measured.zeroLift,
                maxLift - measured.maxLift,
                drag - measured.drag,
                moment - measured.moment);
    }
}
