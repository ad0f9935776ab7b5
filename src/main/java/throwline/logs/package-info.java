/**
 * Reduction of flight logs: wind, airspeed, glides, stalls and rolls found in what sensors wrote down.
 *
 * <p>Takes: channels over time in SI units, the air of the day, and where a stall is to be looked for.
 *
 * <p>Gives: found pieces with their numbers and noise, rejected ones with the reason. Knows no solver and no file.
 */
@NullMarked
package throwline.logs;

import org.jspecify.annotations.NullMarked;
