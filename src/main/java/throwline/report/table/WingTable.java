package throwline.report.table;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.study.WingSweep;
import throwline.words.Message;
import throwline.words.Words;

/** The bare wing over incidence as a table of coefficients. */
public final class WingTable {

    private final Page page;
    private final Words words;

    /**
     * A table for this page.
     *
     * @param page where it is shown
     * @param words the sentences
     */
    public WingTable(Page page, Words words) {
        this.page = page;
        this.words = words;
    }

    /**
     * One sweep.
     *
     * @param model name of the model
     * @param sweep the result
     */
    public String write(String model, WingSweep sweep) {
        StringBuilder text = new StringBuilder();
        text.append(page.bold(page.shown(words.say("row.wing.title", model, sweep.setUp()))))
                .append('\n');
        text.append(Wrapped.paragraph(
                "",
                "",
                words.say(
                        "row.wing.sizes",
                        number("%.4g", sweep.area()),
                        number("%.4g", sweep.span()),
                        number("%.4g", sweep.meanChord()),
                        number("%.1f", sweep.speed())),
                page.width()));
        text.append('\n').append(columns(sweep).render(page)).append('\n');
        sweep.stall().ifPresent(stall -> text.append(Wrapped.paragraph("", "", stall(stall), page.width())));
        for (Message note : sweep.warnings()) {
            String sentence = page.shown(new Sentences(words, page.units()).say(note));
            text.append(Wrapped.paragraph("", "", sentence, page.width()));
        }
        text.append(Wrapped.paragraph("", "", words.say("row.wing.meaning"), page.width()));
        return text.append(words.say("row.estimate")).append('\n').toString();
    }

    private String stall(WingSweep.Stall stall) {
        return words.say(
                "row.wing.stall",
                degrees(stall.onset()),
                number("%.3f", stall.onset().lift()),
                number("%.2f", Math.abs(stall.at())),
                degrees(stall.checkedMaximum()),
                number("%.3f", stall.checkedMaximum().lift()),
                degrees(stall.plateau()),
                number("%.3f", stall.plateau().lift()));
    }

    private static String degrees(WingSweep.Mark mark) {
        return number("%.1f", Math.toDegrees(mark.incidence()));
    }

    private Columns columns(WingSweep sweep) {
        List<String> headers = Stream.of(
                        "incidence", "lift", "drag", "induced", "profile", "rolling", "yawing", "pitching", "solved")
                .map(key -> words.say("row.wing." + key))
                .toList();
        Columns columns = new Columns(headers, headers.size() - 1);
        for (WingSweep.Point point : sweep.points()) {
            columns.row(List.of(
                    number("%.1f", Math.toDegrees(point.incidence())),
                    number("%.3f", point.lift()),
                    number("%.4f", point.drag()),
                    number("%.4f", point.inducedDrag()),
                    number("%.4f", point.profileDrag()),
                    number("%.4f", point.rolling()),
                    number("%.4f", point.yawing()),
                    number("%.4f", point.pitching()),
                    words.say(point.converged() ? "row.yes" : "row.no")));
        }
        return columns;
    }

    private static String number(String format, double value) {
        String text = String.format(Locale.ROOT, format, value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }
}
