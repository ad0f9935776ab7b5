package throwline.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import throwline.logs.Channel;
import throwline.notes.LogSource;
import throwline.notes.LogSource.Column;
import throwline.units.Unit;
import throwline.words.Message;

/** Reads a log of cells: comma, semicolon or tab between them, found by the header; only mapped columns are looked at. */
final class LogCells {

    private static final double FULL = 100;
    private static final double BEYOND = 0.1;

    private final LogSource source;
    private final LogRows rows;
    private final Problems problems;
    private final List<Mapped> mapped = new ArrayList<>();
    private final List<String> setUps;
    private char separator;
    private int width;

    /** A column that is read: where it stands, what it holds, and its values in SI units. */
    private record Mapped(int place, Channel channel, DoubleUnaryOperator unit) {}

    LogCells(LogSource source, LogRows rows, Problems problems) {
        this.source = source;
        this.rows = rows;
        this.problems = problems;
        setUps = rows.setUps();
    }

    void read(String text) {
        int line = 0;
        for (String each : (Iterable<String>) text.lines()::iterator) {
            line++;
            if (each.isBlank() || each.startsWith("#")) {
                continue;
            }
            if (width == 0) {
                header(each, line);
            } else {
                row(CellLine.of(each, separator), line);
            }
            if (width < 0 || problems.isFull()) {
                return;
            }
        }
    }

    private void header(String line, int number) {
        separator = CellLine.separator(line);
        List<String> names = CellLine.of(line, separator).cells();
        width = names.size();
        source.columns().forEach((key, column) -> {
            int place = names.indexOf(column.name());
            Optional<Channel> channel = Channel.of(key);
            if (place < 0) {
                problems.add(
                        new FilePlace(number, 1),
                        "",
                        Message.of(
                                "input.log.column",
                                UnknownKey.shown(column.name()),
                                key,
                                String.join(
                                        ", ",
                                        names.stream().map(UnknownKey::shown).toList())));
                width = -1;
            } else {
                channel.ifPresent(c -> mapped.add(new Mapped(place, c, unit(c, column))));
            }
        });
    }

    private DoubleUnaryOperator unit(Channel channel, Column column) {
        if (!column.points().isEmpty()) {
            return value -> between(column.points(), value);
        }
        if (channel == Channel.THROTTLE || channel == Channel.ROLL_STICK) {
            double shut = column.shut().orElse(0);
            double full = column.full().orElse(FULL);
            return value -> (value - shut) / (full - shut);
        }
        if (channel == Channel.SWITCH) {
            return value -> place(column.meanings(), value);
        }
        Unit unit = LogUnits.of(channel, column.unit()).orElse(Unit.SECOND);
        return unit::toSi;
    }

    private double place(Map<Double, String> meanings, double value) {
        String setUp = meanings.get(value);
        return setUp == null ? -1 : setUps.indexOf(setUp);
    }

    /** Straight between points of the bench, and a tenth of their reach beyond. */
    private static double between(List<double[]> points, double value) {
        double reach = BEYOND * (points.get(points.size() - 1)[0] - points.get(0)[0]);
        if (value < points.get(0)[0] - reach || value > points.get(points.size() - 1)[0] + reach) {
            return Double.NaN;
        }
        int i = 1;
        while (i < points.size() - 1 && value > points.get(i)[0]) {
            i++;
        }
        double[] low = points.get(i - 1);
        double[] high = points.get(i);
        return low[1] + (value - low[0]) / (high[0] - low[0]) * (high[1] - low[1]);
    }

    private void row(CellLine line, int number) {
        if (line.cells().size() != width) {
            String code = separator == ',' && line.cells().size() > width ? "input.log.cells.comma" : "input.log.cells";
            problem(number, 1, code, String.valueOf(line.cells().size()), String.valueOf(width));
            return;
        }
        for (Mapped column : mapped) {
            if (column.channel == Channel.TIME) {
                OptionalDouble time = time(line, column, number);
                if (time.isEmpty() || !rows.begin(time.getAsDouble(), number)) {
                    return;
                }
            }
        }
        for (Mapped column : mapped) {
            String cell = line.cells().get(column.place);
            if (column.channel != Channel.TIME && !cell.isEmpty()) {
                number(line, column, number).ifPresent(v -> rows.put(column.channel, column.unit.applyAsDouble(v)));
            }
        }
    }

    private OptionalDouble time(CellLine line, Mapped column, int number) {
        OptionalDouble clock = LogClock.read(line.cells().get(column.place));
        if (clock.isPresent()) {
            return clock;
        }
        OptionalDouble value = number(line, column, number);
        return value.isPresent() ? OptionalDouble.of(column.unit.applyAsDouble(value.getAsDouble())) : value;
    }

    private OptionalDouble number(CellLine line, Mapped column, int number) {
        String cell = line.cells().get(column.place);
        int place = line.columns().get(column.place);
        boolean comma = cell.matches("[+-]?\\d*,\\d+");
        if (comma && !source.decimalComma()) {
            problem(number, place, "input.log.comma", UnknownKey.shown(cell));
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(comma ? cell.replace(',', '.') : cell);
            if (Double.isFinite(value) && cell.matches("[+-]?[0-9.,eE+-]+")) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException e) {
            // told below
        }
        problem(number, place, "input.log.number", UnknownKey.shown(cell), column.channel.key());
        return OptionalDouble.empty();
    }

    private void problem(int line, int column, String code, Object... arguments) {
        problems.add(new FilePlace(line, column), "", Message.of(code, arguments));
    }
}
