package throwline.power;

/**
 * A drive fitted to what is known of it.
 *
 * @param drive with the battery half way
 * @param basis what it rests on
 * @param torqueFactor torque that the bench read over that of the blades; 1 where none was read
 * @param efficiency shaft power over electric power at full throttle, standing still
 */
public record FittedDrive(Drive drive, DriveBasis basis, double torqueFactor, double efficiency) {}
