package throwline.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.section.PolarRun;
import throwline.section.PolarRun.Kind;
import throwline.section.PolarRun.Point;
import throwline.words.Message;

/**
 * Reads one polar file: lines of {@code # key: value} first ({@code Re} is required, {@code flap_chord} where {@code
 * flap_deg} is not 0; only the keys of {@link #HEADERS} are known), then a line of column names with {@code alpha_deg} and {@code cl}, perhaps
 * {@code cd} and {@code cm} about the quarter chord, then numbers with points and commas. All problems are collected.
 */
public final class PolarFile {

    private static final int FEWEST_POINTS = 3;

    /** Header lines that are known; the last few are for people. */
    private static final List<String> HEADERS = List.of(
            "re",
            "flap_deg",
            "flap_chord",
            "run kind",
            "thickness_pct",
            "camber_pct",
            "moment",
            "source",
            "mark",
            "airfoil",
            "tunnel",
            "note");

    private static final Pattern PER_CENT = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*%.*");

    private static final double NARROWEST = 8;
    private static final double WIDEST = 50;

    private final String file;
    private final Map<String, String> header = new HashMap<>();
    private final Map<String, Integer> headerLines = new HashMap<>();
    private final List<Column> columns = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private final Problems problems;

    private PolarFile(String file) {
        this.file = file;
        problems = new Problems(file);
    }

    private enum Column {
        ALPHA("alpha_deg", -180, 180),
        LIFT("cl", -4, 4),
        DRAG("cd", 0.0005, 3),
        MOMENT("cm", -1.5, 1.5);

        private final String title;
        private final double low;
        private final double high;

        Column(String title, double low, double high) {
            this.title = title;
            this.low = low;
            this.high = high;
        }
    }

    /**
     * What came out of a file.
     *
     * @param run the run; empty where there are problems
     * @param shape what the header says of the airfoil's shape
     * @param problems in the order of the file
     */
    public record Reading(Optional<PolarRun> run, Shape shape, List<Problem> problems) {

        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /**
     * What a header may say of the airfoil's shape.
     *
     * @param thickness over chord
     * @param camber over chord
     * @param moment quarter-chord moment coefficient of the attached flow
     */
    public record Shape(OptionalDouble thickness, OptionalDouble camber, OptionalDouble moment) {}

    /**
     * Reads a file's text.
     *
     * @param file its name, for messages and, where the header does not say it, for the kind of run
     * @param text its content
     */
    public static Reading read(String file, String text) {
        PolarFile polar = new PolarFile(file);
        polar.read(text);
        Optional<PolarRun> run = polar.problems.isEmpty() ? Optional.of(polar.run()) : Optional.empty();
        return new Reading(run, polar.shape(), polar.problems.list());
    }

    private void read(String text) {
        String[] lines = text.split("\\R", -1);
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            if (line.startsWith("#")) {
                readHeader(line.substring(1), i + 1);
            } else if (!line.isEmpty() && columns.isEmpty()) {
                readColumns(lines[i], i + 1);
            } else if (!line.isEmpty()) {
                readRow(lines[i], i + 1);
            }
        }
        checkReynolds();
        checkDeflection();
        checkShape();
        if (problems.isEmpty()) {
            checkPoints();
        }
    }

    private void readHeader(String line, int number) {
        int colon = line.indexOf(':');
        if (colon > 0) {
            String key = line.substring(0, colon).strip().toLowerCase(Locale.ROOT);
            if (!HEADERS.contains(key)) {
                unknown(line.substring(0, colon).strip(), number);
            } else if (header.putIfAbsent(key, line.substring(colon + 1).strip()) == null) {
                headerLines.put(key, number);
            }
        }
    }

    private void unknown(String key, int line) {
        Optional<String> near = NearestName.of(key, HEADERS);
        if (near.isPresent()) {
            problem(line, 1, "input.polar.unknown.near", near.get());
        } else {
            problem(line, 1, "input.polar.unknown", String.join(", ", HEADERS));
        }
    }

    private void readColumns(String line, int number) {
        int place = 1;
        for (String cell : line.split(",", -1)) {
            String title = cell.strip().toLowerCase(Locale.ROOT);
            Column found = null;
            for (Column column : Column.values()) {
                if (column.title.equals(title)) {
                    found = column;
                }
            }
            if (found == null || columns.contains(found)) {
                problem(number, place, "input.polar.columns");
                return;
            }
            columns.add(found);
            place += cell.length() + 1;
        }
        if (!columns.contains(Column.ALPHA) || !columns.contains(Column.LIFT)) {
            problem(number, 1, "input.polar.columns");
        }
    }

    private void readRow(String line, int number) {
        String[] cells = line.split(",", -1);
        if (cells.length != columns.size()) {
            problem(number, 1, "input.polar.cells", String.valueOf(cells.length), String.valueOf(columns.size()));
            return;
        }
        Map<Column, Double> values = new EnumMap<>(Column.class);
        int place = 1;
        for (int i = 0; i < cells.length; i++) {
            Column column = columns.get(i);
            String cell = cells[i].strip();
            boolean needed = column == Column.ALPHA || column == Column.LIFT;
            if (needed || !cell.isEmpty()) {
                values.put(column, number(cell, column, number, place));
            }
            place += cells[i].length() + 1;
        }
        points.add(new Point(
                Math.toRadians(values.getOrDefault(Column.ALPHA, Double.NaN)),
                values.getOrDefault(Column.LIFT, Double.NaN),
                values.getOrDefault(Column.DRAG, Double.NaN),
                values.getOrDefault(Column.MOMENT, Double.NaN)));
    }

    private double number(String cell, Column column, int line, int place) {
        double value;
        try {
            value = Double.parseDouble(cell);
        } catch (NumberFormatException e) {
            value = Double.NaN;
        }
        if (!(value >= column.low && value <= column.high)) {
            problem(line, place, "input.polar.number", cell, column.title, plain(column.low), plain(column.high));
        }
        return value;
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    private void checkReynolds() {
        if (!header.containsKey("re")) {
            problem(0, 0, "input.polar.reynolds.missing");
        } else if (!(reynolds() >= 1_000 && reynolds() <= 1e8)) {
            problem(line("re"), 1, "input.polar.reynolds", header.getOrDefault("re", ""));
        }
    }

    private void checkDeflection() {
        double degrees = leadingNumber("flap_deg", 0);
        if (!(degrees >= -45 && degrees <= 90)) {
            problem(line("flap_deg"), 1, "input.polar.flap", header.getOrDefault("flap_deg", ""));
        }
        double chord = 100 * surfaceChord();
        if (degrees != 0 && !header.containsKey("flap_chord")) {
            problem(line("flap_deg"), 1, "input.polar.chord.missing");
        } else if (header.containsKey("flap_chord") && !(chord >= NARROWEST && chord <= WIDEST)) {
            problem(line("flap_chord"), 1, "input.polar.chord", header.getOrDefault("flap_chord", ""));
        }
    }

    /** Not a number where the header does not say it in per cent. */
    private double surfaceChord() {
        Matcher said = PER_CENT.matcher(header.getOrDefault("flap_chord", ""));
        return said.matches() ? Double.parseDouble(said.group(1)) / 100 : Double.NaN;
    }

    private void checkShape() {
        checkHeader("thickness_pct", 1, 40);
        checkHeader("camber_pct", 0, 20);
        checkHeader("moment", -0.5, 0.2);
    }

    private void checkHeader(String key, double low, double high) {
        double value = leadingNumber(key, low);
        if (!(value >= low && value <= high)) {
            problem(line(key), 1, "input.polar.header", key, header.getOrDefault(key, ""), plain(low), plain(high));
        }
    }

    private void checkPoints() {
        if (points.size() < FEWEST_POINTS) {
            problem(0, 0, "input.polar.points", String.valueOf(points.size()), String.valueOf(FEWEST_POINTS));
        }
        points.sort(Comparator.comparingDouble(Point::alpha));
    }

    private Shape shape() {
        return new Shape(share("thickness_pct"), share("camber_pct"), number("moment"));
    }

    private OptionalDouble share(String key) {
        OptionalDouble percent = number(key);
        return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
    }

    private OptionalDouble number(String key) {
        double value = leadingNumber(key, Double.NaN);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private int line(String key) {
        return headerLines.getOrDefault(key, 0);
    }

    private double reynolds() {
        return leadingNumber("re", Double.NaN);
    }

    private double leadingNumber(String key, double missing) {
        String text = header.get(key);
        if (text == null) {
            return missing;
        }
        try {
            return Double.parseDouble(text.split("[\\s(]", 2)[0]);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    private PolarRun run() {
        return new PolarRun(
                kind(),
                reynolds(),
                Math.toRadians(leadingNumber("flap_deg", 0)),
                header.containsKey("flap_chord") ? surfaceChord() : 0,
                header.getOrDefault("source", ""),
                header.getOrDefault("mark", "").split("[\\s(]", 2)[0],
                points);
    }

    /** From the header, else from the file's name, else from what was measured. */
    private Kind kind() {
        String said = header.getOrDefault("run kind", "").toLowerCase(Locale.ROOT);
        String name = file.toLowerCase(Locale.ROOT);
        if (said.startsWith("lift run") || (said.isEmpty() && name.contains("lift"))) {
            String tells = said.isEmpty() ? name : said;
            return tells.contains("falling") || tells.contains("down") ? Kind.LIFT_DOWN : Kind.LIFT_UP;
        }
        boolean drag = points.stream().anyMatch(point -> !Double.isNaN(point.drag()));
        return drag || said.startsWith("drag run") ? Kind.DRAG : Kind.LIFT_UP;
    }

    private void problem(int line, int column, String code, Object... arguments) {
        problems.add(new FilePlace(line, column), "", Message.of(code, arguments));
    }
}
