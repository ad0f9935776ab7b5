package throwline.input;

/**
 * The level tail that balances and steadies a model as its V-tail does. The lift of each half counts upwards by the cosine
 * of the angle it is raised by, and so does the angle at which the air meets it: lift slope times the cosine squared, on the
 * area of both halves laid flat (P. E. Purser and J. P. Campbell, NACA Report 823, 1945, from memory). Span and chord each
 * times the cosine give that area and keep the aspect ratio. The elevator's effect falls with the cosine alone; measured in
 * millimetres at the trailing edge, the throw is the same on both tails.
 *
 * @param span of the level tail, m
 * @param chord of the level tail, m
 * @param raised angle of each half above level, rad, more than 0 and less than a quarter turn
 */
record VTail(double span, double chord, double raised) {

    /** An angle at least this large is the one between the halves, seen from behind; a smaller one is how far each rises. */
    private static final double BETWEEN = Math.toRadians(70);

    /**
     * The level tail for a V-tail.
     *
     * @param panels span along both halves, tip to tip, m
     * @param chord of a half, m
     * @param angle between the halves, or of each half above level, rad, more than 0 and less than half a turn
     */
    static VTail level(double panels, double chord, double angle) {
        double raised = angle < BETWEEN ? angle : (Math.PI - angle) / 2;
        return new VTail(panels * Math.cos(raised), chord * Math.cos(raised), raised);
    }
}
