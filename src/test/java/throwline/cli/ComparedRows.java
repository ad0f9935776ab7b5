package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.study.FlightQuantity;

/**
 * Numbers of a comparison as CSV, by pack, set-up, quantity and stick, and the rules that hold between two comparisons.
 *
 * @param all the rows; none where the text is no comparison
 */
record ComparedRows(Map<String, Row> all) {

    private static final String HEADER = "model,pack,setup,quantity,stick,unit,value,low,high,basis,why";

    /** Keys of numbers that not every model must have, as a regular expression. */
    static final String NOT_ALWAYS = Stream.of(FlightQuantity.values())
            .filter(quantity -> !quantity.isExpected())
            .map(FlightQuantity::key)
            .collect(Collectors.joining("|"));

    /** One number, its band, or the reason why there is none; and the line as it stands. */
    record Row(OptionalDouble value, OptionalDouble low, OptionalDouble high, String why, String line) {}

    static ComparedRows of(String csv) {
        Map<String, Row> rows = new TreeMap<>();
        List<String> lines = csv.lines().map(PlausibleModel::withFirstNames).toList();
        if (!lines.isEmpty() && lines.get(0).equals(HEADER)) {
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = cells(line);
                rows.put(
                        String.join(" ", cells.subList(1, 5)),
                        new Row(number(cells.get(6)), number(cells.get(7)), number(cells.get(8)), cells.get(10), line));
            }
        }
        return new ComparedRows(rows);
    }

    /** Those of one pack. */
    ComparedRows withPack(String pack) {
        Map<String, Row> rows = new TreeMap<>(all);
        rows.keySet().removeIf(name -> !name.startsWith(pack + " "));
        return new ComparedRows(rows);
    }

    /** True where a number is missing that every model has. */
    boolean isIncomplete() {
        return all.entrySet().stream()
                .anyMatch(row -> !row.getKey().matches(".* (" + NOT_ALWAYS + ") ")
                        && row.getValue().value().isEmpty());
    }

    /** Set-ups in which the pack "loaded" stalls slower than "light". */
    List<String> heavierSlower() {
        return slower(this, "light", "loaded", "stallSpeed");
    }

    /** Set-ups that come in slower in this thinner air than there. */
    List<String> slowerThan(ComparedRows denser) {
        return slower(denser, "light", "light", "approachSpeed");
    }

    private List<String> slower(ComparedRows firsts, String first, String second, String quantity) {
        List<String> broken = new ArrayList<>();
        for (String setUp : List.of("clean", "landing")) {
            OptionalDouble one = firsts.valueOf(first + " " + setUp + " " + quantity + " ");
            OptionalDouble other = valueOf(second + " " + setUp + " " + quantity + " ");
            if (one.isPresent() && other.isPresent() && other.getAsDouble() < one.getAsDouble()) {
                broken.add(quantity + " of " + setUp + ": " + second + " " + other.getAsDouble() + " below " + first
                        + " " + one.getAsDouble());
            }
        }
        return broken;
    }

    /** Rows of which there is not one with the same bytes. */
    List<String> notSameBytes(ComparedRows other) {
        List<String> broken = new ArrayList<>();
        all.forEach((name, row) -> {
            Row second = other.all.get(name);
            if (second == null || !second.line().equals(row.line())) {
                broken.add(row.line() + " against " + (second == null ? "nothing" : second.line()));
            }
        });
        other.all.keySet().stream().filter(name -> !all.containsKey(name)).forEach(broken::add);
        return broken;
    }

    /** Rows of which the numbers differ by more than a share of their size, or of 1 where they are smaller. */
    List<String> notWithin(double share, ComparedRows other) {
        List<String> broken = new ArrayList<>();
        if (!all.keySet().equals(other.all.keySet())) {
            broken.add(all.keySet() + " against " + other.all.keySet());
        }
        all.forEach((name, row) -> {
            OptionalDouble second = other.all.containsKey(name) ? other.valueOf(name) : OptionalDouble.empty();
            boolean alike = row.value().isPresent() == second.isPresent()
                    && (second.isEmpty()
                            || Math.abs(second.getAsDouble() - row.value().getAsDouble())
                                    <= share * Math.max(1, Math.abs(row.value().getAsDouble())));
            if (!alike) {
                broken.add(name + ": " + row.value() + " against " + second);
            }
        });
        return broken;
    }

    private OptionalDouble valueOf(String name) {
        Row row = all.get(name);
        if (row == null) {
            throw new AssertionError("no row " + name);
        }
        return row.value();
    }

    private static OptionalDouble number(String cell) {
        return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        boolean quoted = false;
        StringBuilder cell = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
