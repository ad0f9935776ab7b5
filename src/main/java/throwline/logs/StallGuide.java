package throwline.logs;

/**
 * Where the stall of a set-up is to be looked for, as predicted for the air of the day.
 *
 * @param stallSpeed m/s
 * @param descentAngle just above the stall, rad
 */
public record StallGuide(double stallSpeed, double descentAngle) {}
