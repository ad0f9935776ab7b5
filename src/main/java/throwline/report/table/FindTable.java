package throwline.report.table;

import java.util.List;
import java.util.stream.Stream;
import throwline.report.Page;
import throwline.report.Sentences;
import throwline.study.Comparison;
import throwline.study.FindResult;
import throwline.study.SetUpResult;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Message;
import throwline.words.Words;

/** What must stand where, as a person reads it at a terminal. */
public final class FindTable {

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
    public FindTable(Page page, Words words) {
        this.page = page;
        this.words = words;
        sentences = new Sentences(words, page.units());
        printer = new QuantityPrinter(page.units());
    }

    /** The whole answer. */
    public String write(FindResult result) {
        FindWords say = new FindWords(page, words);
        StringBuilder text = new StringBuilder();
        text.append(page.bold(page.shown(words.say("find.title", result.model().name()))))
                .append('\n');
        text.append(page.shown(words.say(
                        "row.pack",
                        result.pack().name(),
                        printer.print(result.pack().mass(), Dimension.MASS),
                        printer.print(result.pack().balance(), Dimension.LENGTH))))
                .append('\n')
                .append(Wrapped.paragraph("", "", words.say("find.air"), page.width()))
                .append('\n');
        result.setUp().ifPresent(s -> text.append(new FoundSetUpText(result, s, say, words, sentences).write()));
        FoundRollText rolls = new FoundRollText(result.model(), say, words, sentences);
        result.roll()
                .ifPresent(
                        r -> text.append(rolls.roll(r, result.question().roll().orElseThrow())));
        result.rollHelp().ifPresent(h -> text.append(rolls.help(h)));
        result.loop().ifPresent(l -> text.append(new FoundLoopText(result.model(), say, words, sentences).write(l)));
        result.levelTrim().ifPresent(t -> text.append(new MixText(result.model(), say, words, sentences).write(t)));
        result.flown().ifPresent(flown -> flown(text, flown, result));
        notes(text, result, say);
        text.append(Wrapped.paragraph("", "", words.say("row.meaning.likely"), page.width()));
        text.append(Wrapped.paragraph("", "", words.say("row.caution"), page.width()));
        text.append(Wrapped.paragraph("", "", words.say("row.estimate"), page.width()));
        return text.toString();
    }

    /** The sections of the answer, for those who show them otherwise than as lines of text; the first is its title. */
    public List<TextSection> sections(FindResult result) {
        return SectionMarks.byHeadings(new FindTable(SectionMarks.page(page), words).write(result));
    }

    /** The same rows as a comparison of set-ups. */
    private void flown(StringBuilder text, Comparison flown, FindResult result) {
        Footnotes footnotes = new Footnotes();
        List<SetUpResult> setUps = flown.packs().get(0).setUps();
        new FindWords(page, words).heading(text, words.say("find.flown"));
        text.append('\n');
        text.append(new FlyersRows(result.model(), setUps, page, words, sentences, footnotes)
                        .grid()
                        .render(page))
                .append('\n')
                .append(footnotes.render(page.width()));
        String close = new CloseCalls(setUps, words).render(page);
        if (!close.isEmpty()) {
            text.append(page.bold(words.say("row.section.once", words.say("row.section.close"))))
                    .append('\n')
                    .append(close)
                    .append('\n');
        }
    }

    private void notes(StringBuilder text, FindResult result, FindWords say) {
        text.append(page.bold(words.say("row.section.notes"))).append('\n');
        Stream.of(
                        result.notes().stream(),
                        result.flown().stream()
                                .flatMap(f -> f.packs().get(0).setUps().stream())
                                .filter(s -> s.setUp()
                                        .name()
                                        .equals(result.question().name()))
                                .flatMap(s -> s.notes().stream()),
                        Stream.of(Message.of("note.assumed-bands")),
                        result.beyondMeasured().stream())
                .flatMap(s -> s)
                .distinct()
                .forEach(note -> say.line(text, sentences.say(note)));
        text.append('\n');
    }
}
