package throwline.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import throwline.model.Model;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.report.TooCloseToCall;
import throwline.report.chart.SetUpMark;
import throwline.report.data.DataUnit;
import throwline.report.data.SixFigures;
import throwline.report.html.Card.Bar;
import throwline.report.html.Card.Exact;
import throwline.report.html.Card.Group;
import throwline.report.html.Card.Line;
import throwline.report.table.GlanceRows;
import throwline.report.table.GlanceRows.GlanceCell;
import throwline.report.table.GlanceRows.GlanceRow;
import throwline.study.FlightQuantity;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** Makes cards from the rows of the table: those of the same name in all packs and models share a card and its scale. */
final class CardMaker {

    /** Free room at both ends of a bar, in shares of its range. */
    private static final double ROOM = 0.06;

    private final Words words;
    private final HowWorkedOut how;
    private final CloseCalls closeCalls;

    CardMaker(Words words) {
        this.words = words;
        how = new HowWorkedOut(words);
        closeCalls = new CloseCalls(words);
    }

    /** One row of one pack. */
    private record Strip(Flown flown, GlanceRow row) {
        List<Optional<Headline.Known>> known() {
            return row.cells().stream()
                    .map(cell -> cell.number().flatMap(Headlines::known))
                    .toList();
        }

        List<TooCloseToCall.Entry> entries() {
            List<TooCloseToCall.Entry> entries = new ArrayList<>();
            for (int i = 0; i < row.cells().size(); i++) {
                String name = flown.result().setUps().get(i).setUp().name();
                known().get(i).ifPresent(known -> entries.add(new TooCloseToCall.Entry(name, known)));
            }
            return entries;
        }
    }

    /** The cards of all rows, in their order. */
    List<Card> cards(List<Flown> all) {
        Map<String, List<Strip>> byRow = new LinkedHashMap<>();
        for (Flown flown : all) {
            List<GlanceRow> rows = new GlanceRows(flown.page(), words)
                    .of(flown.model(), flown.result().setUps());
            for (GlanceRow row : rows) {
                byRow.computeIfAbsent(row.key() + row.label(), key -> new ArrayList<>())
                        .add(new Strip(flown, row));
            }
        }
        return byRow.values().stream().map(this::card).toList();
    }

    /** Where the surfaces of a model stand in each set-up: a card a surface. */
    List<Card> surfaces(Model model, Page page) {
        return new GlanceRows(page, words)
                .surfaces(model).stream()
                        .map(row -> new Card(row.label(), List.of(), List.of(new Group("", stands(model, row)))))
                        .toList();
    }

    private static List<Line> stands(Model model, GlanceRow row) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            GlanceCell cell = row.cells().get(i);
            List<String> more = cell.more().stream().map(CardMaker::said).toList();
            String name = model.setUps().get(i).name();
            lines.add(new Line(
                    SetUpMark.of(i), name, cell.text(), more, Optional.empty(), Optional.empty(), List.of(), false));
        }
        return lines;
    }

    /** False for rows whose numbers are differences already. */
    private static boolean compares(String row) {
        return FlightQuantity.ofRow(row)
                .filter(quantity -> quantity.isOn(FlightQuantity.Screen.CLOSE_CALLS))
                .isPresent();
    }

    private Card card(List<Strip> strips) {
        GlanceRow first = strips.get(0).row();
        Scale scale = Scale.of(strips.stream()
                .flatMap(strip -> strip.known().stream())
                .flatMap(Optional::stream)
                .toList());
        List<String> said = new ArrayList<>();
        List<Group> groups = new ArrayList<>();
        boolean compares = compares(first.key());
        for (Strip strip : strips) {
            List<List<String>> close = compares ? TooCloseToCall.groups(strip.entries()) : List.of();
            closeCalls
                    .inside(strip.flown().who(), close, strip.row().cells().size())
                    .ifPresent(said::add);
            groups.add(new Group(strip.flown().who(), lines(strip, scale, close)));
        }
        for (int i = 1; compares && i < strips.size(); i++) {
            Strip one = strips.get(0);
            Strip other = strips.get(i);
            closeCalls
                    .between(
                            one.flown().who(),
                            one.entries(),
                            other.flown().who(),
                            other.entries(),
                            one.flown().model().equals(other.flown().model()))
                    .ifPresent(said::add);
        }
        return new Card(first.label(), said, groups);
    }

    private List<Line> lines(Strip strip, Scale scale, List<List<String>> close) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < strip.row().cells().size(); i++) {
            lines.add(line(strip, i, scale, close));
        }
        return lines;
    }

    private Line line(Strip strip, int index, Scale scale, List<List<String>> close) {
        Sentences sentences = new Sentences(words, strip.flown().page().units());
        SetUpResult result = strip.flown().result().setUps().get(index);
        GlanceCell cell = strip.row().cells().get(index);
        String name = result.setUp().name();
        String row = strip.row().key();
        Optional<Headline.Known> known = cell.number().flatMap(Headlines::known);
        return new Line(
                SetUpMark.of(index),
                name,
                figure(cell),
                more(cell, sentences),
                known.filter(k -> compares(row)).map(scale::bar),
                known.flatMap(k -> FlightQuantity.ofRow(row).map(found -> exact(found, k))),
                known.map(k -> how.facts(row, k, strip.flown(), result)).orElse(List.of()),
                close.stream().anyMatch(group -> group.contains(name)));
    }

    /** Where there is no number, what is said instead, without the mark of a footnote: the reason stands below. */
    private static String figure(GlanceCell cell) {
        boolean unknown =
                cell.number().filter(Headline.Unknown.class::isInstance).isPresent();
        return unknown ? cell.text().replaceFirst(" ?\\(\\d+\\)$", "") : cell.text();
    }

    private List<String> more(GlanceCell cell, Sentences sentences) {
        List<String> more = new ArrayList<>();
        cell.more().forEach(line -> more.add(said(line)));
        if (cell.number().orElse(null) instanceof Headline.Unknown unknown) {
            more.add(sentences.why(unknown));
        }
        return more;
    }

    private static String said(GlanceRows.More line) {
        return Unbroken.of((line.label() + " " + line.text()).strip());
    }

    private static Exact exact(FlightQuantity quantity, Headline.Known known) {
        double unit = DataUnit.of(quantity.dimension()).factor();
        return new Exact(
                SixFigures.of(unit * known.value()),
                SixFigures.of(unit * known.low()),
                SixFigures.of(unit * known.high()));
    }

    /** From the values of a card to shares of its bars. */
    private record Scale(double low, double high) {

        static Scale of(List<Headline.Known> numbers) {
            double low = numbers.stream().mapToDouble(Headline.Known::low).min().orElse(0);
            double high =
                    numbers.stream().mapToDouble(Headline.Known::high).max().orElse(1);
            double room = Math.max(1e-9, ROOM * (high - low));
            return new Scale(low - room, high + room);
        }

        Bar bar(Headline.Known known) {
            Optional<String> zero = low < 0 && high > 0 ? Optional.of(percent(share(0))) : Optional.empty();
            return new Bar(
                    percent(share(known.low())),
                    percent(share(known.value())),
                    percent(share(known.high())),
                    percent(share(known.high()) - share(known.low())),
                    zero);
        }

        private double share(double value) {
            return (value - low) / (high - low);
        }

        private static String percent(double share) {
            return String.format(Locale.ROOT, "%.1f%%", 100 * share);
        }
    }
}
