package throwline.model;

/**
 * The fuselage.
 *
 * @param length length, m
 * @param width largest width, m
 * @param height largest height, m
 * @param nose nose ahead of the wing's leading edge at the middle, m
 * @param boxy true for flat sides and a blunt nose, false for a rounded shape
 */
public record Body(double length, double width, double height, double nose, boolean boxy) {}
