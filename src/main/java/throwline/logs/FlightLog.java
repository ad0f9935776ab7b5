package throwline.logs;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Log of a flight as it was written: channels over time in SI units, not a number where a row has no value. Times rise.
 */
public final class FlightLog {

    private final String name;
    private final Map<Channel, double[]> channels;
    private final List<String> setUps;
    private final boolean shutInSpans;
    private final int dropped;

    /**
     * @param name of its file
     * @param channels all of one length; TIME is among them
     * @param setUps names that SWITCH counts
     * @param shutInSpans true where no channel tells of the throttle: it is taken as closed wherever a set-up is told
     * @param dropped lines left out because their checksum is wrong or they have no fix
     */
    public FlightLog(
            String name, Map<Channel, double[]> channels, List<String> setUps, boolean shutInSpans, int dropped) {
        this.name = name;
        this.channels = new EnumMap<>(channels);
        this.setUps = List.copyOf(setUps);
        this.shutInSpans = shutInSpans;
        this.dropped = dropped;
        int rows = channel(Channel.TIME).length;
        if (this.channels.values().stream().anyMatch(values -> values.length != rows)) {
            throw new IllegalArgumentException("channels of different lengths in " + name);
        }
    }

    /** Name of its file. */
    public String name() {
        return name;
    }

    /** Whether it has a channel. */
    public boolean has(Channel channel) {
        return channels.containsKey(channel);
    }

    /** Values of a channel, one a row; none where it is missing. */
    double[] channel(Channel channel) {
        return channels.getOrDefault(channel, new double[0]);
    }

    /** Number of rows. */
    public int rows() {
        return channel(Channel.TIME).length;
    }

    /** First time of it, s. */
    public double start() {
        return rows() == 0 ? 0 : channel(Channel.TIME)[0];
    }

    /** Set-ups that it tells apart. */
    public List<String> setUps() {
        return setUps;
    }

    /** True where the throttle is taken as closed wherever a set-up is told. */
    boolean shutInSpans() {
        return shutInSpans;
    }

    /** Lines that were left out: wrong checksum, no fix. */
    public int dropped() {
        return dropped;
    }
}
