package throwline.flight;

/**
 * Roll and turn that full throttle gives a model whose propeller turns to the right seen from behind, at one speed
 * (methods manual 20.16).
 *
 * @param rolling moment that the ailerons have to hold, N m, left wing down positive
 * @param rudder that holds the nose on a usual fin, rad, to the right positive
 */
public record Turning(double rolling, double rudder) {}
