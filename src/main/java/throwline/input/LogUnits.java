package throwline.input;

import java.util.Optional;
import throwline.logs.Channel;
import throwline.units.Dimension;
import throwline.units.Unit;

/** Units that channels of a log may have. */
final class LogUnits {

    private LogUnits() {}

    /** Dimension of a channel; empty where its values are told by full and closed, or by a list. */
    static Optional<Dimension> dimension(Channel channel) {
        return switch (channel) {
            case TIME -> Optional.of(Dimension.TIME);
            case HEIGHT -> Optional.of(Dimension.LENGTH);
            case PRESSURE -> Optional.of(Dimension.PRESSURE);
            case GROUND_SPEED, AIRSPEED -> Optional.of(Dimension.SPEED);
            case COURSE, LATITUDE, LONGITUDE, ELEVATOR -> Optional.of(Dimension.ANGLE);
            case ROLL_RATE -> Optional.of(Dimension.ANGULAR_RATE);
            case CURRENT -> Optional.of(Dimension.CURRENT);
            case VOLTAGE -> Optional.of(Dimension.VOLTAGE);
            case THROTTLE, ROLL_STICK, SWITCH -> Optional.empty();
        };
    }

    /** The unit spelt so; positions are degrees where nothing is said. */
    static Optional<Unit> of(Channel channel, String spelt) {
        boolean position = channel == Channel.LATITUDE || channel == Channel.LONGITUDE;
        if (spelt.isEmpty() && position) {
            return Optional.of(Unit.DEGREE);
        }
        return dimension(channel).flatMap(d -> Unit.spelt(spelt, d));
    }
}
