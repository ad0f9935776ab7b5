package throwline.flight;

/**
 * What the model does by itself while its surfaces go from one set-up to another, nobody at the stick.
 *
 * @param time that the surfaces take, s
 * @param mix share of the elevator's whole change that is mixed in, 0 to 1
 * @param balloon most that it rises above the path it was on, m, not negative
 * @param drop most that it sinks below the path it was on while that matters, m, not negative
 * @param mostLoad largest load, lift over weight
 * @param leastLoad smallest load
 * @param slowest lowest airspeed, m/s
 * @param fastest highest airspeed, m/s
 * @param followed false where the angle of attack left the range that was solved: the numbers then end there
 */
public record SurfaceMove(
        double time,
        double mix,
        double balloon,
        double drop,
        double mostLoad,
        double leastLoad,
        double slowest,
        double fastest,
        boolean followed) {}
