package throwline.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import throwline.model.Servo;
import throwline.model.Stick;
import throwline.report.EdgeThrow;
import throwline.report.ElevatorMixes;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.data.SheetEntry;
import throwline.report.data.SheetNumbers;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Cell;
import throwline.report.sheet.SheetDocument.Cells;
import throwline.report.sheet.SheetDocument.Checks;
import throwline.report.sheet.SheetDocument.Column;
import throwline.report.sheet.SheetDocument.Heading;
import throwline.report.sheet.SheetDocument.Kind;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.report.sheet.SheetDocument.Remark;
import throwline.report.sheet.SheetDocument.Row;
import throwline.report.sheet.SheetDocument.Table;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.FirstStall;
import throwline.study.SetUpResult.Manner;
import throwline.words.Words;

/** What to expect of every set-up, with room for what was measured, and in which order to try them. */
final class FieldCard {

    private static final double LETTERS = 8.2;
    private static final int ABREAST = 4;
    private static final String NONE = SheetFigures.NONE;
    private static final double DEGREE = Math.toDegrees(1);

    private final SheetAnswer answer;
    private final Words words;
    private final SheetFigures figures;
    private final EdgeThrow elevator;
    private final Changes changes;
    private final List<SheetEntry> numbers;

    FieldCard(SheetAnswer answer, Page page, Words words) {
        this.answer = answer;
        this.words = words;
        figures = new SheetFigures(page, words);
        elevator = ElevatorMixes.edge(answer.model());
        changes = new Changes(answer.earlier());
        numbers = answer.numbers();
    }

    SheetDocument document(Size.Paper paper) {
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(new BalanceWarning(answer.pack().setUps(), words).blocks());
        for (String caution : List.of("motor", "failsafe", "range", "place", "people")) {
            blocks.add(new Paragraph(words.say("sheet.caution." + caution), caution.equals("motor")));
        }
        blocks.add(new Heading(words.say("sheet.field.day")));
        blocks.add(day());
        blocks.add(new Heading(words.say("sheet.field.expect")));
        List<SetUpResult> all = answer.pack().setUps();
        for (int from = 0; from < all.size(); from += ABREAST) {
            blocks.add(expected(all.subList(from, Math.min(all.size(), from + ABREAST))));
        }
        blocks.add(new Paragraph(words.say("sheet.field.meaning"), false));
        mixes(blocks);
        blocks.add(new Heading(words.say("sheet.field.order")));
        blocks.add(new Checks(new FlightOrder(answer.model(), all, figures, words).steps()));
        blocks.add(new Paragraph(words.say("row.estimate"), true));
        String title = words.say("sheet.field.title", answer.model().name());
        return new SheetDocument(
                "field-card",
                title,
                words.say("sheet.field.below", answer.pack().pack().name()),
                words.say("sheet.foot", title),
                Size.page(paper, LETTERS),
                blocks);
    }

    private Table day() {
        List<Column> columns = new ArrayList<>();
        List<Cell> blanks = new ArrayList<>();
        for (String key : List.of("date", "pilot", "wind", "temperature", "battery", "weight")) {
            columns.add(new Column(words.say("sheet.field.day." + key), "", 1, false));
            blanks.add(new Cell("\n", Kind.BLANK));
        }
        return new Table(columns, List.of(new Cells(blanks)));
    }

    private Table expected(List<SetUpResult> setUps) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("", "", 88, false));
        setUps.forEach(r -> columns.add(new Column(r.setUp().name(), "", 112, false)));
        List<Row> rows = new ArrayList<>();
        row(rows, "row.stalls", setUps, r -> speed(r, "stallSpeed", r.stallSpeed()));
        row(rows, "row.comein", setUps, r -> speed(r, "approachSpeed", r.approachSpeed()));
        row(
                rows,
                "row.descent",
                setUps,
                r -> number(r, "", "descentAngle", r.descentAngle(), figures::degrees, band(DEGREE, 1), DEGREE));
        row(
                rows,
                "row.sink",
                setUps,
                r -> number(r, "", "sinkRate", r.sinkRate(), figures::oneSpeed, figures::speedBand, 1));
        row(rows, "row.elevator", setUps, this::elevator);
        row(rows, "row.mix", setUps, this::mix);
        for (Stick stick : answer.model().sticks()) {
            if (stick instanceof Stick.Roll) {
                named(rows, words.say("row.roll.of", stick.name()), setUps, r -> roll(r, stick.name()));
            }
        }
        row(rows, "row.first", setUps, this::first);
        row(
                rows,
                "row.flap-limit",
                setUps,
                r -> r.number(FlightQuantity.FLAP_SPEED_LIMIT) instanceof Headline.Unknown unknown
                        ? figures.noFlapLimit(unknown)
                        : speed(r, "flapSpeedLimit", r.number(FlightQuantity.FLAP_SPEED_LIMIT)));
        row(rows, "row.roundout", setUps, r -> length(r, "flareHeight", r.number(FlightQuantity.FLARE_HEIGHT), 1));
        row(rows, "row.floats", setUps, r -> length(r, "float", r.number(FlightQuantity.FLOAT), 0));
        row(rows, "row.stops", setUps, r -> length(r, "landingDistance", r.number(FlightQuantity.LANDING_DISTANCE), 0));
        row(rows, "row.bumps", setUps, r -> speed(r, "gustLimit", r.number(FlightQuantity.GUST_LIMIT)));
        return new Table(columns, rows);
    }

    private String length(SetUpResult r, String quantity, Headline headline, int decimals) {
        return number(r, "", quantity, headline, v -> SheetFigures.number(v, decimals) + " m", band(1, decimals), 1);
    }

    private void row(List<Row> rows, String key, List<SetUpResult> setUps, Function<SetUpResult, String> cell) {
        named(rows, words.say(key), setUps, cell);
    }

    /** What is expected, and below it a line to write what was measured on. */
    private void named(List<Row> rows, String name, List<SetUpResult> setUps, Function<SetUpResult, String> cell) {
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell(name + "\n \n" + words.say("sheet.field.measured"), Kind.PLAIN));
        for (SetUpResult r : setUps) {
            String text = cell.apply(r);
            cells.add(text.equals(NONE) ? Cell.of(NONE) : new Cell(text + "\n ", Kind.BLANK));
        }
        rows.add(new Cells(cells));
    }

    private String speed(SetUpResult r, String quantity, Headline headline) {
        return number(r, "", quantity, headline, figures::speed, figures::speedBand, 1);
    }

    private Function<Headline.Known, String> band(double factor, int decimals) {
        return known -> figures.band(known, factor, decimals);
    }

    private String number(
            SetUpResult r,
            String stick,
            String quantity,
            Headline headline,
            DoubleFunction<String> shown,
            Function<Headline.Known, String> band,
            double factor) {
        return headline instanceof Headline.Known known
                ? shown.apply(known.value()) + "\n"
                        + words.say("sheet.field.likely", band.apply(known))
                        + before(r, "", stick, quantity, v -> shown.apply(v / factor))
                : NONE;
    }

    private String elevator(SetUpResult r) {
        return r.elevator() instanceof Headline.Known known
                ? twice(known.value()) + "\n"
                        + words.say(
                                "sheet.field.likely",
                                words.say("row.band", figures.angle(known.low()), figures.angle(known.high())))
                        + before(r, "", "", "elevator", v -> twice(v / DEGREE))
                : NONE;
    }

    /** A line that says what the earlier sheet expected, where that was something else. */
    private String before(SetUpResult r, String surface, String stick, String quantity, DoubleFunction<String> shown) {
        return numbers.stream()
                .filter(e -> e.setUp().equals(r.setUp().name())
                        && e.surface().equals(surface)
                        && e.stick().equals(stick)
                        && e.quantity().equals(quantity))
                .findFirst()
                .flatMap(e -> changes.was(e, shown))
                .map(then -> "\n" + words.say("sheet.field.before", then))
                .orElse("");
    }

    /** 7.3 mm down, 6.3 degrees. */
    private String twice(double angle) {
        String size = figures.length(elevator.distance(angle)) + " " + figures.lengthUnit();
        String edge = words.say(angle > 0 ? "row.down" : "row.up", size);
        return words.say("sheet.field.twice", edge, SheetFigures.number(Math.abs(Math.toDegrees(angle)), 1));
    }

    private String mix(SetUpResult r) {
        if (r.setUp().equals(answer.model().reference())) {
            return NONE;
        }
        return r.servos()
                .mix()
                .map(p ->
                        twice(p.angle()) + before(r, Servo.ELEVATOR, SheetNumbers.MIX, "angle", v -> twice(v / DEGREE)))
                .orElse(words.say("row.none"));
    }

    private String roll(SetUpResult r, String stick) {
        return r.rollRates().stream()
                .filter(roll -> roll.stick().equals(stick))
                .findFirst()
                .map(roll -> number(
                        r,
                        stick,
                        "rollRate",
                        roll.rate(),
                        v -> SheetFigures.number(Math.toDegrees(v), 0) + "\u00b0/s",
                        band(DEGREE, 0),
                        DEGREE))
                .orElse(NONE);
    }

    private String first(SetUpResult r) {
        FirstStall stall = r.firstStall();
        if (Headlines.known(r.stallSpeed()).isEmpty() || stall.manner() == Manner.NOT_REACHED) {
            return words.say("row.first.not");
        }
        String where = stall.surface().isEmpty() ? words.say("row.first.bare") : stall.surface();
        String then = words.say(Sentences.key(stall.manner()));
        return words.say("sheet.field.first", where, figures.percent(stall.spanFraction()), then);
    }

    private void mixes(List<Block> blocks) {
        List<ElevatorMixes.Mix> mixes =
                ElevatorMixes.of(answer.model(), answer.pack().setUps());
        if (mixes.isEmpty()) {
            return;
        }
        blocks.add(new Heading(
                words.say("sheet.field.mixes", answer.model().reference().name())));
        List<Column> columns = new ArrayList<>();
        for (String key : List.of("setup", "speed", "sits", "change", "half", "trimmed")) {
            columns.add(new Column(words.say("sheet.field.mixes." + key), "", 1, false));
        }
        List<Row> rows = new ArrayList<>();
        String last = "";
        for (ElevatorMixes.Mix mix : mixes) {
            rows.add(new Cells(List.of(
                    new Cell(mix.setUp().equals(last) ? "" : mix.setUp(), Kind.STRONG),
                    Cell.of(figures.speed(mix.speed())),
                    Cell.of(twice(mix.elevator())),
                    Cell.of(twice(mix.change())),
                    Cell.of(mix.half() == 0 ? words.say("row.none") : twice(mix.half())),
                    new Cell("", Kind.BLANK))));
            last = mix.setUp();
        }
        rows.add(new Remark(words.say("sheet.caution.mix")));
        blocks.add(new Table(columns, rows));
    }
}
