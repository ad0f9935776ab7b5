package throwline.logs;

/**
 * Place to look for the stall of a set-up, as predicted for the air of the day.
 *
 * @param stallSpeed m/s
 * @param descentAngle just above the stall, rad
 */
public record StallGuide(double stallSpeed, double descentAngle) {}
