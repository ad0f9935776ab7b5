package throwline.report.table;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.model.Assumption;
import throwline.model.Model;
import throwline.report.CompareAnswer;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.study.Comparison.PackResult;
import throwline.study.SetUpResult;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/** A comparison as a person reads it at a terminal: one block a pack, then what holds for all. */
public final class CompareTable {

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
    public CompareTable(Page page, Words words) {
        this.page = page;
        this.words = words;
        this.sentences = new Sentences(words, page.units());
        this.printer = new QuantityPrinter(page.units());
    }

    /** The whole answer for one model. */
    public String write(CompareAnswer answer) {
        Model model = answer.comparison().model();
        StringBuilder text = new StringBuilder();
        text.append(page.bold(page.shown(model.name()))).append('\n');
        text.append(Wrapped.paragraph("", "", new FlownIn(words, printer).say(answer.comparison()), page.width()))
                .append('\n');
        List<PackResult> packs = answer.comparison().packs();
        packs.forEach(pack -> pack(text, model, pack));
        perPack(text, "row.section.close", packs, setUps -> new CloseCalls(setUps, words).render(page));
        perPack(text, "row.section.setups", packs, this::setUpNotes);
        section(
                text,
                words.say("row.section.surfaces"),
                new SurfaceRows(model, page, words).grid().render(page));
        section(text, words.say("row.section.sticks"), new SurfaceRows(model, page, words).sticks());
        section(
                text,
                words.say("row.section.notes"),
                notes(answer.notes(), answer.comparison().warnings()));
        section(
                text,
                words.say(assumedHeading(answer.assumed()), answer.assumed().size()),
                assumed(answer.assumed()));
        text.append(meaning(answer));
        return text.toString();
    }

    private void pack(StringBuilder text, Model model, PackResult result) {
        Footnotes footnotes = new Footnotes();
        text.append(page.bold(page.shown(words.say(
                        "row.pack",
                        result.pack().name(),
                        printer.print(result.pack().mass(), Dimension.MASS),
                        printer.print(result.pack().balance(), Dimension.LENGTH)))))
                .append('\n');
        new SetUpNotes(words, sentences)
                .first(result.setUps())
                .forEach(line -> text.append(page.bold(Wrapped.paragraph("", "", page.shown(line), page.width()))));
        text.append('\n');
        text.append(new FlyersRows(model, result.setUps(), page, words, sentences, footnotes)
                .grid()
                .render(page));
        text.append('\n');
        String marks = footnotes.render(page.width());
        text.append(marks).append(marks.isEmpty() ? "" : "\n");
    }

    /** A section that is given once where it is the same with every pack. */
    private void perPack(
            StringBuilder text, String heading, List<PackResult> packs, Function<List<SetUpResult>, String> body) {
        List<String> bodies =
                packs.stream().map(pack -> body.apply(pack.setUps())).toList();
        if (bodies.stream().distinct().count() == 1) {
            section(text, words.say("row.section.once", words.say(heading)), bodies.get(0));
            return;
        }
        for (int i = 0; i < bodies.size(); i++) {
            String pack = page.shown(packs.get(i).pack().name());
            section(text, words.say("row.section.with", words.say(heading), pack), bodies.get(i));
        }
    }

    private String setUpNotes(List<SetUpResult> setUps) {
        return new SetUpNotes(words, sentences)
                .others(setUps).stream()
                        .map(line -> Wrapped.paragraph("  ", "    ", page.shown(line), page.width()))
                        .collect(Collectors.joining());
    }

    private String notes(List<Message> notes, List<Message> warnings) {
        return Stream.concat(warnings.stream(), notes.stream())
                .map(note -> Wrapped.paragraph("  ", "    ", page.shown(sentences.say(note)), page.width()))
                .collect(Collectors.joining());
    }

    private static String assumedHeading(List<Assumption> assumed) {
        return assumed.size() == 1 ? "row.section.assumed.one" : "row.section.assumed";
    }

    private String assumed(List<Assumption> assumed) {
        String list = assumed.stream().map(a -> a.path() + " " + a.value()).collect(Collectors.joining(", "));
        return list.isEmpty() ? "" : Wrapped.paragraph("  ", "  ", page.shown(list), page.width());
    }

    private void section(StringBuilder text, String heading, String body) {
        if (!body.isEmpty()) {
            Wrapped.lines(heading, page.width())
                    .forEach(line -> text.append(page.bold(line)).append('\n'));
            text.append(body).append('\n');
        }
    }

    /** What the words of the table mean, how far to trust them, and what to take care of. */
    private String meaning(CompareAnswer answer) {
        String reference = answer.comparison().model().reference().name();
        return Wrapped.paragraph("", "", page.shown(words.say("row.meaning.mix", reference)), page.width())
                + Wrapped.paragraph("", "", words.say("row.meaning.field"), page.width())
                + Wrapped.paragraph("", "", words.say("row.meaning.likely"), page.width())
                + Wrapped.paragraph("", "", words.say("row.caution"), page.width())
                + Wrapped.paragraph("", "", words.say("row.estimate"), page.width());
    }
}
