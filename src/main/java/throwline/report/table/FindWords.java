package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import throwline.model.Model;
import throwline.model.Surface;
import throwline.report.BenchThrow;
import throwline.report.EdgeThrow;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.sizing.CandidateFlight;
import throwline.sizing.Limit;
import throwline.words.Words;

/** Phrases that several answers of a search share. */
final class FindWords {

    private final Page page;
    private final Words words;
    private final Figures figures;

    FindWords(Page page, Words words) {
        this.page = page;
        this.words = words;
        figures = new Figures(page, words);
    }

    Page page() {
        return page;
    }

    Figures figures() {
        return figures;
    }

    /** A sentence below a heading. */
    void line(StringBuilder text, String sentence) {
        text.append(Wrapped.paragraph("  ", "    ", page.shown(sentence), page.width()));
    }

    /** What was wanted, and whether it is met, has a nearest answer, or none at all. */
    void outcome(StringBuilder text, String wanted, boolean met, boolean flies) {
        String key = met ? "find.heading.met" : flies ? "find.heading.not" : "find.heading.none";
        heading(text, words.say(key, wanted));
    }

    void heading(StringBuilder text, String heading) {
        Wrapped.lines(page.shown(heading), page.width())
                .forEach(line -> text.append(page.bold(line)).append('\n'));
    }

    /** The flaps are as far down as they go; ... */
    String limits(List<Limit> limits) {
        return limits.stream()
                .map(l -> words.say(
                        "find.limit." + l.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .collect(Collectors.joining("; "));
    }

    /** Flaps 58 degrees down, ailerons neutral. */
    String surfaces(Model model, CandidateFlight trial) {
        return model.wing().surfaces().stream()
                .filter(s -> s.travelUp() > 0 || s.travelDown() > 0)
                .map(s -> words.say(
                        "find.surface",
                        s.name(),
                        figures.deflection(trial.setUp().deflection(s.name()))))
                .collect(Collectors.joining(", "));
    }

    /** One row a surface: degrees, distance, share of its travel. */
    String bench(List<BenchThrow> rows, Model model) {
        Grid grid = new Grid(List.of(
                words.say("find.column.angle"), words.say("find.column.distance"), words.say("find.column.travel")));
        for (BenchThrow row : rows) {
            grid.row(
                    page.shown(row.surface()),
                    List.of(
                            figures.deflection(row.angle()),
                            row.angle() == 0 ? "" : figures.edge(row.angle(), edge(model, row.surface())),
                            row.angle() == 0 ? "" : figures.share(row.share())));
        }
        return grid.render(page);
    }

    /** The trailing edge of a surface, or of the elevator. */
    static EdgeThrow edge(Model model, String name) {
        return model.wing()
                .surface(name)
                .map(s -> new EdgeThrow(model.wing().throwChord(s)))
                .orElseGet(() -> elevatorEdge(model));
    }

    static EdgeThrow elevatorEdge(Model model) {
        return new EdgeThrow(model.tail().throwChord());
    }

    /** Surfaces of the wing that can move. */
    static List<Surface> movable(Model model) {
        return model.wing().surfaces().stream()
                .filter(s -> s.travelUp() > 0 || s.travelDown() > 0)
                .toList();
    }

    /** A small difference of angle. */
    String angleStep(double angle) {
        return String.format(Locale.ROOT, "%.2f", Math.abs(Math.toDegrees(angle))) + page.degreeSign();
    }

    /** A number with two decimals. */
    static String ratio(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }
}
