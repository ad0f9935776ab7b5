package throwline.flight;

/**
 * A steady headwind that gets weaker towards open ground: {@code V(h) = V(10 m) (h / 10 m)^(1/7)} (MEMORY,
 * methods manual 9.6).
 *
 * @param atTenMetres m/s, from ahead
 */
public record WindProfile(double atTenMetres) {

    private static final double REFERENCE = 10;
    private static final double POWER = 1.0 / 7;

    /** Heights below this are taken as this one, where grass and model are as high, m. */
    private static final double LOWEST = 0.1;

    /** No wind. */
    public static WindProfile still() {
        return new WindProfile(0);
    }

    /** Speed at a height, m/s. */
    public double at(double height) {
        return atTenMetres * Math.pow(Math.max(LOWEST, height) / REFERENCE, POWER);
    }

    /** Change of speed over height, 1/s. */
    double gradient(double height) {
        return height < LOWEST ? 0 : POWER * at(height) / height;
    }
}
