package throwline.input;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import throwline.logs.Channel;
import throwline.units.Unit;
import throwline.words.Message;

/**
 * A mapping of columns to channels as the names of the columns suggest it. It is only a proposal: a person keeps it or not.
 */
public final class ProposedColumns {

    /** So many rows are looked at for values of switches and the ends of throttles. */
    private static final int LOOKED_AT = 200_000;

    private static final int MOST_POSITIONS = 8;
    private static final double PER_CENT = 101;

    private final List<Proposed> all = new ArrayList<>();
    private final List<String> ignored = new ArrayList<>();
    private final TreeSet<Double> positions = new TreeSet<>();
    private char separator = ',';
    private int rows;

    /**
     * A column with what it seems to hold.
     *
     * @param channel what it seems to hold
     * @param name in the header
     * @param unit spelt as the flights file has it; empty where none is needed
     * @param assumed true where the header does not say the unit
     * @param first its first value
     * @param least smallest value
     * @param most largest value
     */
    public record Proposed(
            Channel channel, String name, String unit, boolean assumed, String first, double least, double most) {}

    private ProposedColumns() {}

    /**
     * Looks at a log.
     *
     * @param file a file of cells under a header
     * @return the proposal; a problem where the file cannot be read
     */
    public static Looked of(Path file) {
        try {
            ProposedColumns proposed = new ProposedColumns();
            proposed.look(SourceText.decode(LogFile.bytes(file)));
            return proposed.rows == 0
                    ? new Looked(Optional.empty(), Optional.of(nothing(file)))
                    : new Looked(Optional.of(proposed), Optional.empty());
        } catch (UnreadableFile e) {
            return new Looked(Optional.empty(), Optional.of(e.problem(file.toString())));
        }
    }

    /**
     * What came of looking at a log.
     *
     * @param columns the proposal; empty where there is a problem
     * @param problem why there is none
     */
    public record Looked(Optional<ProposedColumns> columns, Optional<Problem> problem) {}

    private static Problem nothing(Path file) {
        return new Problem(file.toString(), 0, 0, "", Message.of("input.log.nothing"));
    }

    /** Whether a file has columns at all; the standards' formats need none. */
    public static boolean areNeeded(Path file) {
        return LogFormat.of(String.valueOf(file.getFileName())).hasColumns();
    }

    /** Columns that seem to hold a channel. */
    public List<Proposed> all() {
        return List.copyOf(all);
    }

    /** Names of the other columns. */
    public List<String> ignored() {
        return List.copyOf(ignored);
    }

    /** Positions of a switch that the log has, rising; empty where there is none. */
    public List<Double> positions() {
        return positions.size() > MOST_POSITIONS ? List.of() : List.copyOf(positions);
    }

    /** The character between cells. */
    public char separator() {
        return separator;
    }

    /** Rows below the header. */
    public int rows() {
        return rows;
    }

    private void look(String text) {
        List<String> names = List.of();
        List<double[]> ends = new ArrayList<>();
        List<String> first = List.of();
        Map<Channel, Integer> places = Map.of();
        for (String line : (Iterable<String>) text.lines()::iterator) {
            if (line.isBlank() || line.startsWith("#") || rows > LOOKED_AT) {
                continue;
            }
            if (names.isEmpty()) {
                separator = CellLine.separator(line);
                names = CellLine.of(line, separator).cells();
                places = places(names);
                names.forEach(name -> ends.add(new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}));
                continue;
            }
            List<String> cells = CellLine.of(line, separator).cells();
            first = rows == 0 ? cells : first;
            rows++;
            for (int i = 0; i < Math.min(cells.size(), names.size()); i++) {
                double value = value(cells.get(i));
                if (!Double.isNaN(value)) {
                    ends.get(i)[0] = Math.min(ends.get(i)[0], value);
                    ends.get(i)[1] = Math.max(ends.get(i)[1], value);
                    if (places.getOrDefault(Channel.SWITCH, -1) == i && positions.size() <= MOST_POSITIONS) {
                        positions.add(value);
                    }
                }
            }
        }
        take(names, places, ends, first);
    }

    private static double value(String cell) {
        return cell.matches("[+-]?\\d+(\\.\\d+)?") ? Double.parseDouble(cell) : Double.NaN;
    }

    private void take(List<String> names, Map<Channel, Integer> places, List<double[]> ends, List<String> first) {
        for (int i = 0; i < names.size(); i++) {
            int place = i;
            Optional<Channel> channel = places.entrySet().stream()
                    .filter(e -> e.getValue() == place)
                    .map(Map.Entry::getKey)
                    .findFirst();
            double[] range = ends.get(i);
            String shown = i < first.size() ? first.get(i) : "";
            if (channel.isEmpty() || needsBench(channel.get(), names.get(i), range)) {
                ignored.add(names.get(i));
                continue;
            }
            Optional<Unit> unit = unit(names.get(i), channel.get());
            boolean clock = LogClock.read(shown).isPresent() && channel.get() == Channel.TIME;
            String spelt = clock
                    ? ""
                    : unit.or(() -> usual(channel.get())).map(Unit::symbol).orElse("");
            boolean assumed = !clock && unit.isEmpty() && !spelt.isEmpty();
            all.add(new Proposed(channel.get(), names.get(i), spelt, assumed, shown, range[0], range[1]));
        }
    }

    /** Stick positions that are no per cent, and elevators that are no angles, mean nothing without the bench. */
    private static boolean needsBench(Channel channel, String name, double[] range) {
        boolean wide = Math.max(Math.abs(range[0]), Math.abs(range[1])) > PER_CENT;
        return (channel == Channel.ROLL_STICK && wide)
                || (channel == Channel.ELEVATOR && unit(name, channel).isEmpty());
    }

    private static Map<Channel, Integer> places(List<String> names) {
        Map<Channel, Integer> places = new EnumMap<>(Channel.class);
        for (int i = 0; i < names.size(); i++) {
            int place = i;
            suggested(names.get(i)).ifPresent(channel -> places.putIfAbsent(channel, place));
        }
        return places;
    }

    /** The channel that a name suggests, in the trade's words. */
    private static Optional<Channel> suggested(String name) {
        String n = " " + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9/%]+", " ") + " ";
        if (n.contains("airspeed") || n.contains("air speed") || n.contains("pitot")) {
            return Optional.of(Channel.AIRSPEED);
        }
        if (n.contains("ground speed") || n.contains("groundspeed") || n.contains("gps speed")) {
            return Optional.of(Channel.GROUND_SPEED);
        }
        if (n.contains("roll") && (n.contains("rate") || n.contains("/s"))) {
            return Optional.of(Channel.ROLL_RATE);
        }
        String[][] words = {
            {"time", "seconds", " t "},
            {" lat ", "latitude"},
            {" lon ", "longitude"},
            {"course", "track"},
            {"pressure"},
            {"height", " alt ", "altitude"},
            {"throttle", " thr "},
            {"elevator", " ele "},
            {"aileron", " ail "},
            {"switch", "flight phase"},
            {"current", " amps "},
            {"voltage", " volts "}
        };
        Channel[] channels = {
            Channel.TIME,
            Channel.LATITUDE,
            Channel.LONGITUDE,
            Channel.COURSE,
            Channel.PRESSURE,
            Channel.HEIGHT,
            Channel.THROTTLE,
            Channel.ELEVATOR,
            Channel.ROLL_STICK,
            Channel.SWITCH,
            Channel.CURRENT,
            Channel.VOLTAGE
        };
        for (int i = 0; i < words.length; i++) {
            for (String word : words[i]) {
                if (n.contains(word)) {
                    return Optional.of(channels[i]);
                }
            }
        }
        return Optional.empty();
    }

    /** The unit that a name ends with: behind a blank, in brackets, or spelt out. */
    private static Optional<Unit> unit(String name, Channel channel) {
        String[] words = name.replaceAll("[()\\[\\]_,]+", " ").strip().split("\\s+", -1);
        for (int i = words.length - 1; i >= 0; i--) {
            String word = words[i].equalsIgnoreCase("seconds") ? "s" : words[i];
            Optional<Unit> unit = LogUnits.dimension(channel).flatMap(d -> Unit.spelt(word, d));
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }

    private static Optional<Unit> usual(Channel channel) {
        return switch (channel) {
            case HEIGHT -> Optional.of(Unit.METRE);
            case TIME -> Optional.of(Unit.SECOND);
            default -> LogUnits.dimension(channel).map(d -> Unit.of(d).get(0));
        };
    }
}
