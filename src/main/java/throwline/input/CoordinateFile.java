package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import throwline.section.AirfoilShape;
import throwline.words.Message;

/**
 * Reads the coordinates of an airfoil: x and y a line, separated by blanks, tabs, a comma or a semicolon, in chords, per
 * cent or any length; from the trailing edge over the top and back along the bottom, or top and bottom from the nose, with
 * or without a title and a line of counts. Lines that start with # are skipped.
 */
public final class CoordinateFile {

    private static final int FEWEST = 10;
    private static final int MOST = 2000;

    private final Problems problems;
    private final List<OutlinePoint> points = new ArrayList<>();

    private CoordinateFile(String file) {
        problems = new Problems(file);
    }

    /**
     * What came out of a file.
     *
     * @param shape the outline; empty where there are problems
     * @param problems in the order of the file
     */
    public record Reading(Optional<AirfoilShape> shape, List<Problem> problems) {

        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a file's text.
     *
     * @param file its name, for messages
     * @param text its content
     */
    public static Reading read(String file, String text) {
        CoordinateFile reader = new CoordinateFile(file);
        reader.readLines(text);
        Optional<AirfoilShape> shape =
                reader.problems.isEmpty() ? new Outline(reader.points, reader.problems).shape() : Optional.empty();
        return new Reading(shape, reader.problems.list());
    }

    private void readLines(String text) {
        String[] lines = text.split("\\R", -1);
        for (int i = 0; i < lines.length && problems.isEmpty(); i++) {
            String line = lines[i].strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                readLine(lines[i], i + 1);
            }
        }
        dropCounts();
        if (problems.isEmpty() && (points.size() < FEWEST || points.size() > MOST)) {
            problem(new FilePlace(0, 0), "input.outline.points", points.size(), FEWEST, MOST);
        }
    }

    private void readLine(String line, int number) {
        List<String> cells = cells(line);
        OptionalDouble first = value(cells.get(0));
        boolean pair =
                cells.size() == 2 && first.isPresent() && value(cells.get(1)).isPresent();
        FilePlace place =
                new FilePlace(number, line.length() - line.stripLeading().length() + 1);
        if (pair) {
            points.add(new OutlinePoint(first.getAsDouble(), value(cells.get(1)).getAsDouble(), number));
        } else if (cells.stream().anyMatch(cell -> cell.matches("[-+]?\\d+,\\d+"))) {
            problem(place, "input.outline.comma");
        } else if (!points.isEmpty() || first.isPresent()) {
            problem(place, "input.outline.pair");
        }
    }

    /** A comma separates only where nothing else does. */
    private static List<String> cells(String line) {
        String[] cells = line.strip().split("\\s*;\\s*|\\s*,\\s+|\\s+", -1);
        return List.of(cells.length == 1 ? line.strip().split(",", -1) : cells);
    }

    private static OptionalDouble value(String cell) {
        try {
            double value = Double.parseDouble(cell);
            boolean plain = cell.matches("[-+0-9.eE]+");
            return plain && Math.abs(value) < 1e6 ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** A first line with the numbers of points of the two surfaces. */
    private void dropCounts() {
        if (points.size() > 1) {
            OutlinePoint first = points.get(0);
            boolean whole = first.x() == Math.rint(first.x()) && first.y() == Math.rint(first.y());
            if (whole && first.x() >= 3 && first.y() >= 3 && first.x() + first.y() == points.size() - 1) {
                points.remove(0);
            }
        }
    }

    private void problem(FilePlace place, String code, Object... arguments) {
        Object[] shown = new Object[arguments.length];
        for (int i = 0; i < shown.length; i++) {
            shown[i] = String.valueOf(arguments[i]);
        }
        problems.add(place, "", Message.of(code, shown));
    }
}
