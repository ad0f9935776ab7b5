package throwline.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.logs.Channel;
import throwline.model.Model;
import throwline.model.SetUp;
import throwline.notes.LogSource;
import throwline.notes.LogSource.Column;
import throwline.notes.LogSource.Span;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;
import throwline.units.Unit;

/** Builder of what a file of flights says of a log: file, columns, set-ups by switch or by time. */
final class LogBuilder {

    private static final Pattern PAIR = Pattern.compile("\\s*([+-]?[0-9]+(?:\\.[0-9]+)?)\\s*=\\s*(.+)");
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}):([0-9]{2})(?::([0-9]{2}(?:\\.[0-9]+)?))?");

    private final Model model;
    private final Problems problems;

    LogBuilder(Model model, Problems problems) {
        this.model = model;
        this.problems = problems;
    }

    /** The log; empty where none is told of. */
    Optional<LogSource> log(Branch log) {
        String file = FlightsBuilder.said(log, "file");
        if (file.isEmpty()) {
            return Optional.empty();
        }
        if (file.contains("/") || file.contains("\\") || file.startsWith(".")) {
            problems.add(log.child("file"), "input.flights.log.file", UnknownKey.shown(file));
        }
        Map<String, Double> lags = new HashMap<>();
        for (Branch lag : log.child("lag").children()) {
            lag.amount().ifPresent(v -> lags.put(lag.name(), v));
        }
        List<Integer> out = new ArrayList<>();
        for (Branch number : log.child("leave out").names()) {
            if (number.name().matches("[0-9]{1,4}")) {
                out.add(Integer.parseInt(number.name()));
            } else {
                problems.add(number, "input.flights.log.piece", UnknownKey.shown(number.name()));
            }
        }
        Map<String, Column> columns = columns(log.child("columns"));
        complete(log, file, columns);
        return Optional.of(new LogSource(
                file,
                columns,
                lags,
                FlightsBuilder.said(log, "decimal comma").equals("yes"),
                FlightsBuilder.said(log, "temperature corrected").equals("yes"),
                spans(log.child("set-ups")),
                out));
    }

    /** What a file with columns must have, and what means nothing alone. */
    private void complete(Branch log, String file, Map<String, Column> columns) {
        if (!LogFormat.of(file).hasColumns()) {
            return;
        }
        Set<String> has = columns.keySet();
        if (!has.contains("time")) {
            problems.add(log, "input.flights.log.time-column");
        }
        boolean way = has.contains("course") || has.containsAll(List.of("latitude", "longitude"));
        if (has.contains("ground speed") && !way) {
            problems.add(log.child("columns").child("ground speed"), "input.flights.log.way");
        }
    }

    /** Units that a channel needs; none where full and closed, or points of the bench, say it. */
    private void unit(Branch column, Channel channel, Column made) {
        Optional<Dimension> dimension = LogUnits.dimension(channel);
        boolean told = channel == Channel.ELEVATOR && !made.points().isEmpty();
        boolean clock = channel == Channel.TIME && made.unit().isEmpty();
        if (dimension.isEmpty() || told || clock) {
            return;
        }
        if (LogUnits.of(channel, made.unit()).isEmpty()) {
            String allowed = String.join(
                    ", ", Unit.of(dimension.get()).stream().map(Unit::symbol).toList());
            problems.add(
                    column.has("unit") ? column.child("unit") : column,
                    "input.flights.log.unit",
                    UnknownKey.shown(made.unit()),
                    column.name(),
                    allowed);
        }
    }

    private Map<String, Column> columns(Branch columns) {
        Map<String, Column> all = new LinkedHashMap<>();
        for (Branch column : columns.children()) {
            Optional<String> holds = FlightsBuilder.known(column.name(), Channel.keys());
            if (holds.isEmpty()) {
                problems.add(
                        column,
                        "input.flights.log.holds",
                        UnknownKey.shown(column.name()),
                        String.join(", ", Channel.keys()));
                continue;
            }
            Column made = new Column(
                    FlightsBuilder.said(column, "column"),
                    FlightsBuilder.said(column, "unit"),
                    points(column.child("at")),
                    meanings(column.child("means")),
                    number(column.child("full")),
                    number(column.child("shut")),
                    FlightsBuilder.said(column, "stick"));
            Channel.of(holds.get()).ifPresent(channel -> unit(column, channel, made));
            all.put(holds.get(), made);
        }
        return all;
    }

    private OptionalDouble number(Branch branch) {
        Optional<String> said = branch.value(String.class);
        if (said.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!said.get().matches("[+-]?[0-9]+(\\.[0-9]+)?")) {
            problems.add(branch, "input.flights.log.number", UnknownKey.shown(said.get()));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(said.get()));
    }

    /** Channel value and deflection, rising. */
    private List<double[]> points(Branch at) {
        List<double[]> points = new ArrayList<>();
        for (Branch pair : at.names()) {
            Matcher matcher = PAIR.matcher(pair.name());
            Optional<WrittenDeflection> deflection =
                    matcher.matches() ? Answers.deflection(matcher.group(2)) : Optional.empty();
            OptionalDouble angle = deflection.isPresent()
                    ? deflection.get().signed(model.tail().throwChord())
                    : OptionalDouble.empty();
            if (angle.isEmpty()) {
                problems.add(pair, "input.flights.log.pair", UnknownKey.shown(pair.name()));
            } else {
                points.add(new double[] {Double.parseDouble(matcher.group(1)), angle.getAsDouble()});
            }
        }
        points.sort(Comparator.comparingDouble(p -> p[0]));
        if (points.size() == 1) {
            problems.add(at, "input.flights.log.two");
        }
        return points;
    }

    private Map<Double, String> meanings(Branch means) {
        Map<Double, String> all = new HashMap<>();
        for (Branch pair : means.names()) {
            Matcher matcher = PAIR.matcher(pair.name());
            Optional<String> setUp = matcher.matches() ? setUp(matcher.group(2)) : Optional.empty();
            if (setUp.isEmpty()) {
                problems.add(pair, "input.flights.log.meaning", UnknownKey.shown(pair.name()), names());
            } else {
                all.put(Double.parseDouble(matcher.group(1)), setUp.get());
            }
        }
        return all;
    }

    private Optional<String> setUp(String said) {
        return FlightsBuilder.known(
                said, model.setUps().stream().map(SetUp::name).toList());
    }

    private String names() {
        return String.join(", ", model.setUps().stream().map(SetUp::name).toList());
    }

    private List<Span> spans(Branch list) {
        List<Span> spans = new ArrayList<>();
        for (Branch span : list.children()) {
            OptionalDouble from = time(span.child("from"));
            OptionalDouble to = time(span.child("to"));
            String said = FlightsBuilder.said(span, "set-up");
            Optional<String> setUp = setUp(said);
            if (setUp.isEmpty() && !said.isEmpty()) {
                problems.add(span.child("set-up"), "input.flights.setup", UnknownKey.shown(said), names());
            }
            if (from.isEmpty() || to.isEmpty() || setUp.isEmpty()) {
                continue;
            }
            if (to.getAsDouble() <= from.getAsDouble()) {
                problems.add(span.child("to"), "input.flights.log.backwards");
            } else {
                spans.add(new Span(from.getAsDouble(), to.getAsDouble(), setUp.get()));
            }
        }
        return spans;
    }

    /** Seconds of the log, or a time of day. */
    private OptionalDouble time(Branch branch) {
        Optional<String> said = branch.value(String.class);
        if (said.isEmpty()) {
            return OptionalDouble.empty();
        }
        Matcher clock = CLOCK.matcher(said.get());
        if (clock.matches()) {
            double seconds = clock.group(3) == null ? 0 : Double.parseDouble(clock.group(3));
            return OptionalDouble.of(
                    3600 * Integer.parseInt(clock.group(1)) + 60 * Integer.parseInt(clock.group(2)) + seconds);
        }
        if (QuantityReader.read(said.get(), Dimension.TIME) instanceof ReadQuantity.Amount amount) {
            return OptionalDouble.of(amount.quantity().value());
        }
        problems.add(branch, "input.flights.log.time", UnknownKey.shown(said.get()));
        return OptionalDouble.empty();
    }
}
