package throwline.report.table;

import java.util.List;
import java.util.stream.Collectors;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.CheckAnswer;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/** A model as it was read, what is unusual about it and what was assumed, as a person reads it at a terminal. */
public final class CheckTable {

    private final Page page;
    private final Words words;
    private final Sentences sentences;
    private final QuantityPrinter printer;

    /**
     * A table for this page.
     *
     * @param page where it is shown
     * @param words the sentences
     */
    public CheckTable(Page page, Words words) {
        this.page = page;
        this.words = words;
        this.sentences = new Sentences(words, page.units());
        this.printer = new QuantityPrinter(page.units());
    }

    /** The whole answer. */
    public String write(CheckAnswer answer) {
        Model model = answer.model();
        StringBuilder text = new StringBuilder();
        text.append(page.bold(page.shown(model.name()))).append('\n');
        text.append(paragraph("", words.say("check.wing", length(model.wing().span()), area(model), meanChord(model))));
        model.packs().forEach(pack -> text.append(pack(model, pack)));
        text.append('\n');
        unusual(text, answer.unusual());
        SurfaceRows surfaces = new SurfaceRows(model, page, words);
        section(text, words.say("row.section.surfaces"), surfaces.grid().render(page));
        section(text, words.say("row.section.sticks"), surfaces.sticks());
        section(text, words.say("row.section.notes"), notes(answer.notes()));
        assumed(text, answer.assumed());
        return text.toString().stripTrailing() + "\n";
    }

    private String pack(Model model, Pack pack) {
        double share =
                (pack.balance() - model.wing().meanLeadingEdge()) / model.wing().meanAerodynamicChord();
        String line = words.say(
                "check.pack",
                pack.name(),
                printer.print(pack.mass(), Dimension.MASS),
                length(pack.balance()),
                printer.print(share, Dimension.FRACTION),
                printer.print(pack.mass() / model.wing().area(), Dimension.WING_LOADING));
        return paragraph("", line);
    }

    private void unusual(StringBuilder text, List<Message> unusual) {
        if (unusual.isEmpty()) {
            text.append(paragraph("", words.say("check.usual"))).append('\n');
        } else {
            section(text, words.say("check.unusual"), notes(unusual));
        }
    }

    private void assumed(StringBuilder text, List<CheckAnswer.Assumed> assumed) {
        if (assumed.isEmpty()) {
            text.append(paragraph("", words.say("check.complete")));
            return;
        }
        String heading = assumed.size() == 1 ? "row.section.assumed.one" : "row.section.assumed";
        String body = assumed.stream()
                .map(a -> paragraph("  ", words.say("check.assumed", a.path(), a.value(), a.reason())))
                .collect(Collectors.joining());
        section(text, words.say(heading, assumed.size()), body);
    }

    private String notes(List<Message> notes) {
        return notes.stream().map(note -> paragraph("  ", sentences.say(note))).collect(Collectors.joining());
    }

    private String paragraph(String indent, String sentence) {
        return Wrapped.paragraph(indent, indent + (indent.isEmpty() ? "" : "  "), page.shown(sentence), page.width());
    }

    private void section(StringBuilder text, String heading, String body) {
        if (!body.isEmpty()) {
            Wrapped.lines(heading, page.width())
                    .forEach(line -> text.append(page.bold(line)).append('\n'));
            text.append(body).append('\n');
        }
    }

    private String length(double metres) {
        return printer.print(metres, Dimension.LENGTH);
    }

    private String area(Model model) {
        return printer.print(model.wing().area(), Dimension.AREA);
    }

    private String meanChord(Model model) {
        return length(model.wing().meanAerodynamicChord());
    }
}
