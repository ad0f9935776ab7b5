package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.section.Airfoil;
import throwline.section.PolarRun;
import throwline.words.Words;

/** The airfoils of the library: name, shape, Reynolds numbers at which they were measured. */
public final class AirfoilTable {

    private static final int THOUSAND = 1000;

    private final Page page;
    private final Words words;

    /**
     * A table for this page.
     *
     * @param page where it is shown
     * @param words the sentences
     */
    public AirfoilTable(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /** These airfoils, one a line. */
    public String write(List<Airfoil> airfoils) {
        Columns columns = new Columns(
                Stream.of("name", "thick", "camber", "re", "measured", "source", "what")
                        .map(key -> words.say("row.airfoil." + key))
                        .toList(),
                0);
        SourceList sources = new SourceList();
        for (Airfoil airfoil : airfoils) {
            columns.row(List.of(
                    airfoil.name(),
                    percent(airfoil.thickness()),
                    percent(airfoil.camber()),
                    measuredAt(airfoil),
                    measured(airfoil),
                    sources.letters(airfoil),
                    page.shown(airfoil.description())));
        }
        StringBuilder text = new StringBuilder(columns.render(page));
        text.append('\n').append(Wrapped.paragraph("", "", words.say("row.airfoil.codes"), page.width()));
        sources.lines().forEach(line -> text.append(Wrapped.paragraph("", "   ", page.shown(line), page.width())));
        return text.toString();
    }

    private static String measured(Airfoil airfoil) {
        StringBuilder codes = new StringBuilder();
        add(codes, "D", airfoil, run -> run.points().stream().anyMatch(point -> point.drag() > 0));
        add(codes, "U", airfoil, run -> run.kind() == PolarRun.Kind.LIFT_UP);
        add(codes, "L", airfoil, run -> run.kind() == PolarRun.Kind.LIFT_DOWN);
        add(codes, "M", airfoil, run -> run.points().stream().anyMatch(point -> !Double.isNaN(point.moment())));
        add(codes, "F", airfoil, run -> run.deflection() != 0);
        return codes.toString();
    }

    private static void add(StringBuilder codes, String code, Airfoil airfoil, Predicate<PolarRun> holds) {
        if (airfoil.runs().stream().anyMatch(holds)) {
            codes.append(code);
        }
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    /** Rounded to thousands, each once. */
    private static String measuredAt(Airfoil airfoil) {
        TreeSet<Long> thousands = airfoil.runs().stream()
                .filter(run -> run.kind() == PolarRun.Kind.DRAG)
                .map(run -> Math.round(run.reynolds() / THOUSAND))
                .collect(Collectors.toCollection(TreeSet::new));
        return thousands.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
