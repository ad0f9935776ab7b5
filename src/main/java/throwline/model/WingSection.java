package throwline.model;

/**
 * Station of the wing.
 *
 * @param at distance from the middle, m
 * @param chord chord, m
 * @param airfoil name of the airfoil, as {@link AirfoilName} reads it
 * @param washout nose down against the middle, rad, positive for washout
 * @param setBack leading edge behind the leading edge at the middle, m
 */
public record WingSection(double at, double chord, AirfoilName airfoil, double washout, double setBack) {}
