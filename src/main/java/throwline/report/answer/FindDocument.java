package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import throwline.report.chart.FindCharts;
import throwline.report.document.Block;
import throwline.report.document.Block.Medium;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Pictures;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.sizing.Limit;
import throwline.study.FindResult;
import throwline.study.Headline;
import throwline.study.Learnt;
import throwline.study.SetUpResult;
import throwline.words.Message;

/** Answer to what a pilot wants. */
public final class FindDocument {

    private FindDocument() {}

    /**
     * The document.
     *
     * @param result what was found
     * @param learnt what flights told; empty where they put nothing right
     * @param charts draw its pictures
     * @param file the model file
     */
    public static Document of(
            FindResult result, Optional<Learnt> learnt, Supplier<FindCharts> charts, Block.Enclosed file) {
        List<Section> found = new ArrayList<>();
        result.setUp().ifPresent(answer -> found.add(new FoundSetUpSection(result, answer).section()));
        FoundRollSection rolls = new FoundRollSection(result.model());
        result.roll()
                .ifPresent(answer ->
                        found.add(rolls.roll(answer, result.question().roll().orElseThrow())));
        result.rollHelp().ifPresent(answer -> found.add(rolls.help(answer)));
        FoundPowerSection power = new FoundPowerSection(result.model());
        result.takeOff()
                .ifPresent(answer -> found.add(power.takeOff(
                        answer, result.question().powered().takeOffWithin().orElseThrow())));
        result.climb()
                .ifPresent(answer -> found.add(
                        power.climb(answer, result.question().powered().climb().orElseThrow())));
        result.loop().ifPresent(answer -> found.add(new FoundLoopSection(result.model()).section(answer)));
        result.levelTrim().ifPresent(answer -> found.add(new FoundMixSection(result.model(), answer).section()));
        List<Block> blocks = new ArrayList<>();
        List<Paragraph> dangers = dangers(result);
        List<Paragraph> inShort = new ArrayList<>(dangers);
        found.forEach(section -> inShort.add(Paragraph.of(section.heading())));
        inShort.add(Paragraph.say("page.verdict.last"));
        blocks.add(
                Section.of(Text.say("page.verdict"), inShort).as(Role.HEADLINE).on(Medium.PAGE));
        blocks.add(Section.of(
                        Text.say("page.drawn"),
                        List.of(new Pictures(() -> charts.get().onPage(result, "d-"))))
                .on(Medium.PAGE));
        if (!dangers.isEmpty()) {
            Text heading =
                    Text.say("page.verdict.with", Text.name(result.question().name()));
            blocks.add(Section.of(heading, dangers).as(Role.HEADLINE).on(Medium.TERMINAL));
        }
        blocks.addAll(found);
        flown(blocks, result);
        Sections.add(blocks, "row.section.notes", notes(result));
        blocks.addAll(Sections.closing());
        blocks.add(file);
        List<Text> under = new ArrayList<>(List.of(
                Flown.packLine(result.pack()),
                Text.say(result.question().powered().isEmpty() ? "find.air" : "find.air.power")));
        learnt.ifPresent(l -> {
            under.add(LearntNotes.onTop(l));
            under.add(Text.say("find.learnt"));
            if (result.loop().isPresent()) {
                under.add(Text.say("find.learnt.loop"));
            }
            if (!result.question().powered().isEmpty()) {
                under.add(Text.say("find.learnt.power"));
            }
        });
        return new Document(Text.say("find.title", result.model().name()), under, blocks);
    }

    /** What may hurt in the set-up that was found, the worst first. */
    private static List<Paragraph> dangers(FindResult result) {
        return result.flown().stream()
                .flatMap(flown -> flown.packs().get(0).setUps().stream())
                .filter(setUp -> setUp.setUp().name().equals(result.question().name()))
                .flatMap(setUp -> InShortSection.dangers(result.model(), List.of(setUp)).stream())
                .toList();
    }

    /** The same rows as a comparison of set-ups. */
    private static void flown(List<Block> blocks, FindResult result) {
        result.flown().ifPresent(comparison -> {
            List<SetUpResult> setUps = comparison.packs().get(0).setUps();
            Flown flown = new Flown(Text.none(), result.model(), result.pack(), setUps, Text.say("page.air.field"));
            ComparisonRows rows = new ComparisonRows(List.of(flown));
            blocks.add(Section.of(
                    Text.say("find.flown"),
                    List.of(rows.comparison(Text.none(), each -> Text.none(), each -> List.of()))));
            blocks.add(Sections.legend(result.model().reference().name(), List.of(Message.of("note.assumed-bands"))));
        });
    }

    private static List<Paragraph> notes(FindResult result) {
        return Stream.of(
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
                .map(note -> Paragraph.of(Text.of(note)))
                .toList();
    }

    /** What was wanted, and whether it is met, has a nearest answer, or none at all. */
    static Text outcome(Text wanted, boolean met, boolean flies) {
        return Text.say(met ? "find.heading.met" : flies ? "find.heading.not" : "find.heading.none", wanted);
    }

    /** The flaps are as far down as they go; ... */
    static Text limits(List<Limit> limits) {
        return Text.join(
                Join.SEMICOLON,
                limits,
                limit -> Text.say(
                        "find.limit." + limit.name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    /** 15 degrees (likely 12 to 18), or why there is no number. */
    static Text likely(Headline headline, Value.Kind kind) {
        return headline instanceof Headline.Known known
                ? Text.say("find.likely", Value.of(known.value(), kind), new Value.Band(known, kind))
                : Text.say(((Headline.Unknown) headline).why());
    }
}
