package throwline.flight;

/**
 * The load that a gust from below adds, with the relief by the model's own answer:
 * {@code dn = K rho V a w / (2 W / S)}, {@code K = 0.88 u / (5.3 + u)}, {@code u = 2 (W / S) / (rho c a g)} (form
 * of FAR 23.341 from memory; methods manual 9.5).
 *
 * @param wingLoading weight over area, N/m^2
 * @param density kg/m^3
 * @param chord mean chord, m
 * @param liftSlope of the model, per rad
 */
record GustLoad(double wingLoading, double density, double chord, double liftSlope) {

    double massRatio() {
        return 2 * wingLoading / (density * chord * liftSlope * Gravity.STANDARD);
    }

    double relief() {
        return 0.88 * massRatio() / (5.3 + massRatio());
    }

    /** Load added over weight. */
    double load(double speed, double gust) {
        return relief() * density * speed * liftSlope * gust / (2 * wingLoading);
    }
}
