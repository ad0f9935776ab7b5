/**
 * The electric drive of a propeller and the jet behind it.
 *
 * <p>Takes: size and kind of the propeller, what is known of motor and battery, one reading of a bench.
 *
 * <p>Gives: thrust, torque, speed and current at any airspeed and throttle; speed, width and swirl of the slipstream.
 */
@NullMarked
package throwline.power;

import org.jspecify.annotations.NullMarked;
