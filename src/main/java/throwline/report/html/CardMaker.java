package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import throwline.report.chart.SetUpMark;
import throwline.report.data.SixFigures;
import throwline.report.document.Block.Depth;
import throwline.report.document.Comparison;
import throwline.report.document.Comparison.Below;
import throwline.report.document.Comparison.Cell;
import throwline.report.document.Comparison.Measured;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.html.Card.Bar;
import throwline.report.html.Card.Exact;
import throwline.report.html.Card.Fact;
import throwline.report.html.Card.Group;
import throwline.report.html.Card.Line;

/** Makes cards from the rows of a comparison: all packs and models share a card and its scale. */
final class CardMaker {

    /** Free room at both ends of a bar, in shares of its range. */
    private static final double ROOM = 0.06;

    private final Comparison comparison;
    private final Figures figures;

    CardMaker(Comparison comparison, Figures figures) {
        this.comparison = comparison;
        this.figures = figures;
    }

    /** Cards of the rows that are needed so soon. */
    List<Card> cards(Depth depth) {
        return comparison.rows().stream()
                .filter(row -> row.depth() == depth)
                .map(this::card)
                .toList();
    }

    private Card card(Comparison.Row row) {
        Text title = row.family().isEmpty() ? row.label() : Text.say("row.below", row.family(), row.label());
        Scale scale = Scale.of(row.cells().stream()
                .flatMap(List::stream)
                .flatMap(cell -> cell.number().stream())
                .toList());
        List<Group> groups = new ArrayList<>();
        for (int group = 0; group < row.cells().size(); group++) {
            List<Line> lines = new ArrayList<>();
            for (int column = 0; column < row.cells().get(group).size(); column++) {
                lines.add(line(row, group, column, scale));
            }
            if (!lines.isEmpty()) {
                groups.add(new Group(figures.show(comparison.groups().get(group).who()), lines));
            }
        }
        return new Card(figures.show(title), groups);
    }

    private Line line(Comparison.Row row, int group, int column, Scale scale) {
        Cell cell = row.cells().get(group).get(column);
        return new Line(
                SetUpMark.of(column),
                comparison.groups().get(group).columns().get(column),
                figures.show(cell.role() == Role.QUIET ? Text.say("row.close.mark", cell.text()) : cell.text()),
                more(row, group, column, cell),
                cell.number().filter(Measured::drawn).map(scale::bar),
                cell.number().map(CardMaker::exact),
                opened(row, group, column, cell),
                cell.role() == Role.QUIET);
    }

    /** What is folded of the row, then where its number comes from. */
    private List<Fact> opened(Comparison.Row row, int group, int column, Cell cell) {
        List<Fact> opened = new ArrayList<>();
        for (Below below : row.below()) {
            Text said = below.cells().get(group).get(column);
            if (below.depth() == Depth.DETAIL && !said.isEmpty()) {
                opened.add(new Fact(figures.show(below.label()), figures.show(said)));
            }
        }
        cell.facts().forEach(fact -> opened.add(new Fact(figures.show(fact.label()), figures.show(fact.text()))));
        return opened;
    }

    private List<String> more(Comparison.Row row, int group, int column, Cell cell) {
        List<String> more = new ArrayList<>();
        for (Below below : row.below()) {
            String said = figures.show(below.cells().get(group).get(column));
            if (below.depth() == Depth.ESSENTIAL && !said.isEmpty()) {
                more.add((figures.show(below.label()) + " " + said).strip());
            }
        }
        if (!cell.reason().isEmpty()) {
            more.add(figures.show(cell.reason()));
        }
        return more;
    }

    private static Exact exact(Measured number) {
        return new Exact(
                SixFigures.of(number.factor() * number.known().value()),
                SixFigures.of(number.factor() * number.known().low()),
                SixFigures.of(number.factor() * number.known().high()));
    }

    /** From the values of a card to shares of its bars. */
    private record Scale(double low, double high) {

        static Scale of(List<Measured> numbers) {
            double low =
                    numbers.stream().mapToDouble(n -> n.known().low()).min().orElse(0);
            double high =
                    numbers.stream().mapToDouble(n -> n.known().high()).max().orElse(1);
            double room = Math.max(1e-9, ROOM * (high - low));
            return new Scale(low - room, high + room);
        }

        Bar bar(Measured number) {
            Optional<String> zero = low < 0 && high > 0 ? Optional.of(percent(share(0))) : Optional.empty();
            double from = share(number.known().low());
            double to = share(number.known().high());
            return new Bar(
                    percent(from), percent(share(number.known().value())), percent(to), percent(to - from), zero);
        }

        private double share(double value) {
            return (value - low) / (high - low);
        }

        private static String percent(double share) {
            return String.format(Locale.ROOT, "%.1f%%", 100 * share);
        }
    }
}
