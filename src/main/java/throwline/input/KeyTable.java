package throwline.input;

import static java.util.Map.entry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.units.Dimension;

/** The table of keys of a model file, from its resource file. */
final class KeyTable {

    private static final String RESOURCE = "/throwline/keys.txt";

    /** The table of files of flights, and the key below which a model file may hold the same. */
    static final String FLIGHTS = "/throwline/flight-keys.txt";

    static final String FLIGHTS_KEY = "flights";

    private static final int COLUMNS = 7;
    private static final Map<String, Dimension> QUANTITIES = Map.ofEntries(
            entry("length", Dimension.LENGTH),
            entry("mass", Dimension.MASS),
            entry("angle", Dimension.ANGLE),
            entry("share", Dimension.FRACTION),
            entry("speed", Dimension.SPEED),
            entry("temperature", Dimension.TEMPERATURE),
            entry("torque", Dimension.TORQUE),
            entry("current", Dimension.CURRENT),
            entry("voltage", Dimension.VOLTAGE),
            entry("power", Dimension.POWER),
            entry("charge", Dimension.CHARGE),
            entry("time", Dimension.TIME),
            entry("pressure", Dimension.PRESSURE));

    private final Map<String, String[]> rows = new LinkedHashMap<>();
    private final Map<String, Set<String>> below = new LinkedHashMap<>();
    private final KeyRow root;

    private KeyTable(Stream<String> lines) {
        lines.filter(line -> !line.startsWith("#") && !line.isBlank()).forEach(line -> {
            String[] cells = Arrays.stream((line + " ").split("\\|", -1))
                    .map(String::strip)
                    .toArray(String[]::new);
            if (cells.length != COLUMNS) {
                throw new IllegalStateException("the table of keys has " + cells.length + " columns in: " + line);
            }
            String path = cells[0].replace("[]", ".[]");
            rows.put(path, cells);
            stand(path);
        });
        root = group("", KeyRow.Need.REQUIRED);
    }

    /** The table of model files. */
    static KeyTable load() {
        return load(RESOURCE);
    }

    /** The table of model files that may hold their flights. */
    static KeyTable withFlights() {
        return new KeyTable(
                Stream.concat(lines(RESOURCE), lines(FLIGHTS).filter(line -> line.startsWith(FLIGHTS_KEY))));
    }

    /** A table that is packed with the program. */
    static KeyTable load(String resource) {
        return new KeyTable(lines(resource));
    }

    private static Stream<String> lines(String resource) {
        try (InputStream in = KeyTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the table of keys is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole file as one group. */
    KeyRow root() {
        return root;
    }

    /** Every row, in the order of the table. */
    List<KeyRow> all() {
        List<KeyRow> all = new ArrayList<>();
        collect(root, all);
        return all;
    }

    /** The row that a place in a file belongs to, such as {@code wing.sections[2].chord}; names may hold points. */
    Optional<KeyRow> find(String place) {
        return all().stream()
                .filter(k -> matches(k.path(), place))
                .max(Comparator.comparingInt(k -> k.path().length()));
    }

    private static boolean matches(String path, String place) {
        int named = path.indexOf(KeyRow.ANY_NAME);
        int entry = path.indexOf("." + KeyRow.ANY_ENTRY);
        int open = named < 0 ? entry : entry < 0 ? named : Math.min(named, entry);
        if (open < 0 || !place.startsWith(path.substring(0, open))) {
            return path.equals(place);
        }
        String pattern = Arrays.stream(path.replace(".[]", "[]").split("\\.", -1))
                .map(step -> step.equals(KeyRow.ANY_NAME)
                        ? ".+"
                        : Pattern.quote(step).replace("[]", "\\E\\[[0-9]+\\]\\Q"))
                .collect(Collectors.joining("\\."));
        return place.matches(pattern);
    }

    private static void collect(KeyRow key, List<KeyRow> all) {
        for (KeyRow child : key.children()) {
            all.add(child);
            collect(child, all);
        }
    }

    /** Notes a path below the one that holds it, and so on up to the whole file. */
    private void stand(String path) {
        int point = path.lastIndexOf('.');
        String above = point < 0 ? "" : path.substring(0, point);
        boolean more = below.computeIfAbsent(above, p -> new LinkedHashSet<>()).add(path);
        if (more && point >= 0) {
            stand(above);
        }
    }

    /** The rows directly below a path; steps that have no row of their own become groups. */
    private List<KeyRow> below(String path) {
        return below.getOrDefault(path, Set.of()).stream()
                .map(p -> rows.containsKey(p) ? row(p) : group(p, KeyRow.Need.OPTIONAL))
                .toList();
    }

    private KeyRow group(String path, KeyRow.Need need) {
        return new KeyRow(
                path,
                KeyRow.Kind.GROUP,
                Optional.empty(),
                List.of(),
                need,
                "",
                Optional.empty(),
                "",
                "",
                "",
                below(path));
    }

    private KeyRow row(String path) {
        String[] cells = rows.getOrDefault(path, new String[COLUMNS]);
        String kindText = cells[1];
        boolean choice = kindText.startsWith("choice ");
        Optional<Dimension> dimension = Optional.ofNullable(QUANTITIES.get(kindText));
        KeyRow.Kind kind = choice
                ? KeyRow.Kind.CHOICE
                : dimension.isPresent() ? KeyRow.Kind.QUANTITY : KeyRow.Kind.valueOf(kindText.toUpperCase(Locale.ROOT));
        String need = cells[2];
        return new KeyRow(
                path,
                kind,
                dimension,
                choice ? List.of(kindText.substring("choice ".length()).split(" / ", -1)) : List.of(),
                need(need),
                need.replaceFirst("^(= |required unless )", ""),
                range(cells[3], dimension.orElse(Dimension.NUMBER)),
                cells[4],
                cells[5],
                cells[6],
                below(path));
    }

    private static KeyRow.Need need(String text) {
        if (text.startsWith("= ")) {
            return KeyRow.Need.DEFAULT;
        }
        return switch (text) {
            case "required" -> KeyRow.Need.REQUIRED;
            case "optional" -> KeyRow.Need.OPTIONAL;
            case "or none" -> KeyRow.Need.OR_NONE;
            case "worked out" -> KeyRow.Need.WORKED_OUT;
            default -> KeyRow.Need.REQUIRED_UNLESS;
        };
    }

    private static Optional<KeyRow.Range> range(String text, Dimension dimension) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] ends = text.split(" \\.\\. ", 2);
        return Optional.of(new KeyRow.Range(dimension, ends[0], ends[1]));
    }
}
