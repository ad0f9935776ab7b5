package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.study.SectionSweep;
import throwline.words.Words;

/** One section over the angles of ordinary flight as a table of coefficients. */
public final class SectionTable {

    /** Angles of the table, degrees; all angles are in the JSON. */
    private static final int FROM = -16;

    private static final int TO = 30;
    private static final int STEP = 2;

    private final Page page;
    private final Words words;

    /**
     * A table for this page.
     *
     * @param page where it is shown
     * @param words the sentences
     */
    public SectionTable(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /** One sweep. */
    public String write(SectionSweep sweep) {
        StringBuilder text = new StringBuilder();
        text.append(page.bold(page.shown(words.say(
                        "row.section.title",
                        sweep.airfoil(),
                        number("%.0f", sweep.reynolds()),
                        number("%.1f", Math.toDegrees(sweep.flap())) + page.degreeSign(),
                        number("%.0f", 100 * sweep.flapChord())))))
                .append('\n');
        text.append(Wrapped.paragraph(
                "",
                "",
                words.say(
                        "row.section.limits",
                        number("%.2f", sweep.maxLift()),
                        number("%.1f", Math.toDegrees(sweep.stallAngle())) + page.degreeSign(),
                        number("%.2f", sweep.minLift())),
                page.width()));
        text.append('\n').append(columns(sweep).render(page)).append('\n');
        text.append(Wrapped.paragraph("", "", words.say("row.section.meaning"), page.width()));
        return text.append(words.say("row.estimate")).append('\n').toString();
    }

    private Columns columns(SectionSweep sweep) {
        List<String> headers = Stream.of("angle", "lift", "drag", "moment", "hinge", "basis")
                .map(key -> words.say("row.section." + key))
                .toList();
        Columns columns = new Columns(headers, headers.size() - 1);
        for (SectionSweep.Point point : sweep.points()) {
            double degrees = Math.toDegrees(point.angle());
            long whole = Math.round(degrees);
            if (Math.abs(degrees - whole) > 1e-6 || whole < FROM || whole > TO || whole % STEP != 0) {
                continue;
            }
            columns.row(List.of(
                    number("%.0f", degrees),
                    number("%.3f", point.lift()),
                    number("%.4f", point.drag()),
                    number("%.3f", point.moment()),
                    number("%.3f", point.hinge()),
                    words.say("row.basis." + point.basis().name().toLowerCase(Locale.ROOT))));
        }
        return columns;
    }

    private static String number(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }
}
