package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import throwline.model.Field;
import throwline.model.Model;
import throwline.report.CompareAnswer;
import throwline.report.chart.Charts;
import throwline.report.document.Block;
import throwline.report.document.Block.Medium;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Pictures;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.document.PagePicture;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.report.document.Value;
import throwline.section.AirfoilLibrary;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.units.Dimension;
import throwline.words.Message;

/** A comparison: what to take away first, then numbers, charts, throws, what to know, the model files. */
public final class CompareDocument {

    /** Charts in the language of engineers, which come last. */
    private static final Set<String> FOR_THE_CURIOUS = Set.of("load", "drag-lift");

    private final List<Compared> models;
    private final List<Flown> all = new ArrayList<>();
    private final boolean several;

    /**
     * One model of a comparison.
     *
     * @param answer what was found
     * @param airfoils where its airfoils are found
     * @param fileName name of the model file
     * @param fileText what is in it
     */
    public record Compared(CompareAnswer answer, AirfoilLibrary airfoils, String fileName, String fileText) {
        Comparison comparison() {
            return answer.comparison();
        }

        Model model() {
            return answer.comparison().model();
        }
    }

    private CompareDocument(List<Compared> models) {
        this.models = List.copyOf(models);
        several = models.size() > 1;
        models.forEach(model -> model.comparison().packs().forEach(pack -> all.add(flown(model, pack))));
    }

    /**
     * The document of all models.
     *
     * @param models at least one
     * @param charts draw its pictures
     * @param figures write the numbers in pictures
     */
    public static Document of(List<Compared> models, Supplier<Charts> charts, Figures figures) {
        return new CompareDocument(models).document(charts, figures);
    }

    private Document document(Supplier<Charts> charts, Figures figures) {
        List<Block> blocks = new ArrayList<>();
        models.forEach(model -> blocks.addAll(verdicts(model)));
        for (int i = 0; i < models.size(); i++) {
            blocks.add(setUps(models.get(i), charts, figures, "m" + (i + 1) + "-"));
        }
        blocks.add(numbers(all.get(0), Text.say("page.cards")));
        // A page says it above its cards.
        blocks.add(Sections.legend(
                        all.get(0).model().reference().name(),
                        models.get(0).comparison().warnings())
                .on(Medium.TERMINAL));
        all.stream().skip(1).forEach(flown -> blocks.addAll(others(flown)));
        List<Block> curious = new ArrayList<>();
        for (int i = 0; i < models.size(); i++) {
            charts(blocks, curious, models.get(i), charts, "m" + (i + 1));
        }
        perPack(
                blocks,
                Text.say("row.section.setups"),
                flown -> SetUpRemarks.others(flown.setUps()).stream()
                        .map(Paragraph::of)
                        .toList());
        models.forEach(model -> knowledge(blocks, model));
        blocks.addAll(closing());
        blocks.add(Section.of(Text.say("page.curious"), curious).folded().on(Medium.PAGE));
        models.forEach(model -> blocks.add(new Block.Enclosed(model.fileName(), model.fileText())));
        List<String> names = models.stream().map(model -> model.model().name()).toList();
        return new Document(Text.names(names), under(), blocks);
    }

    /** All numbers of set-ups with one pack. */
    private Block numbers(Flown flown, Text title) {
        return new ComparisonRows(List.of(flown))
                .comparison(title, this::heading, each -> SetUpRemarks.first(each.setUps()));
    }

    /** What differs from the first of all; all numbers where one of the set-ups has no counterpart there. */
    private List<Block> others(Flown flown) {
        Flown first = all.stream()
                .filter(each -> each.model().equals(flown.model()))
                .findFirst()
                .filter(own -> !own.equals(flown))
                .orElse(all.get(0));
        List<Block> blocks = new ArrayList<>();
        List<Block> differences = DifferenceSection.withDangers(first, flown);
        if (!differences.isEmpty()) {
            Section against = Section.of(
                    Text.say("row.against", named(flown.model(), flown.briefPackLine()), first.who()), differences);
            if (first.model().equals(flown.model())) {
                blocks.add(against.on(Medium.TERMINAL));
                blocks.add(against.folded().on(Medium.PAGE));
            } else {
                blocks.add(against);
            }
        }
        boolean paired = flown.setUps().stream()
                .allMatch(result -> first.setUps().stream()
                        .anyMatch(other ->
                                other.setUp().name().equals(result.setUp().name())));
        blocks.add(
                paired
                        ? Section.of(Text.say("row.section.full", flown.who()), List.of(numbers(flown, Text.none())))
                                .folded()
                        : numbers(flown, Text.none()));
        return blocks;
    }

    private Flown flown(Compared model, PackResult pack) {
        Comparison comparison = model.comparison();
        Text name = Text.name(model.model().name());
        Text with = Text.say("page.pack", pack.pack().name());
        boolean packs = comparison.packs().size() > 1;
        Text who = several ? packs ? Text.say("page.of", name, with) : name : packs ? with : Text.none();
        Text air = Text.say("page.air", new Value.Plain(comparison.density(), 3));
        return new Flown(who, model.model(), pack.pack(), pack.setUps(), air);
    }

    private Text heading(Flown flown) {
        return named(flown.model(), flown.packLine());
    }

    private Text named(Model model, Text line) {
        return several ? Text.say("page.named", model.name(), line) : line;
    }

    private Text of(String key, Model model) {
        return several ? Text.say("page.of", Text.say(key), model.name()) : Text.say(key);
    }

    private List<Text> under() {
        return models.stream()
                .flatMap(model -> Stream.concat(
                        Stream.of(named(model.model(), air(model.comparison()))),
                        model
                                .answer()
                                .learnt()
                                .map(learnt -> named(model.model(), LearntNotes.onTop(learnt)))
                                .stream()))
                .toList();
    }

    /** In which air and with what propeller all numbers of a comparison hold. */
    private static Text air(Comparison comparison) {
        Model model = comparison.model();
        Field field = model.field();
        Text propeller = model.propeller()
                .map(p -> Text.say("row.air.propeller." + p.shut().name().toLowerCase(Locale.ROOT)))
                .orElse(Text.say("row.air.propeller.none"));
        Text temperature = field.temperature().isPresent()
                ? Value.measure(field.temperature().getAsDouble(), Dimension.TEMPERATURE)
                : Text.say("row.air.standard");
        return Text.say(
                "row.air",
                propeller,
                new Value.Plain(comparison.density(), 2),
                new Value.Plain(field.heightAboveSea(), 0),
                temperature);
    }

    private List<Block> verdicts(Compared model) {
        List<Block> verdicts = new ArrayList<>();
        List<Paragraph> doubts = model.answer()
                .learnt()
                .map(learnt -> new LearntNotes(learnt).contradictions())
                .orElse(List.of());
        if (!doubts.isEmpty()) {
            verdicts.add(Section.of(of("learn.section.contradictions", model.model()), doubts));
        }
        for (PackResult pack : model.comparison().packs()) {
            Flown flown = flown(model, pack);
            Text heading =
                    flown.who().isEmpty() ? Text.say("page.verdict") : Text.say("page.verdict.with", flown.who());
            List<Paragraph> said = InShortSection.of(flown.model(), flown.setUps());
            Section section = Section.of(heading, said).as(Role.HEADLINE);
            boolean warns = flown.setUps().stream().anyMatch(setUp -> setUp.isNoted("note.unstable"));
            boolean first = verdicts.size() == (doubts.isEmpty() ? 0 : 1);
            verdicts.add(first || warns ? section : section.folded().on(Medium.PAGE));
        }
        return verdicts;
    }

    /** Pictures of the set-ups with the first pack; the others differ from them by what the rows say. */
    private static Block setUps(Compared model, Supplier<Charts> charts, Figures figures, String prefix) {
        PackResult pack = model.comparison().packs().get(0);
        return pictures(
                Text.say(
                        "page.setup.pictures", model.model().name(), pack.pack().name()),
                () -> charts.get().setUps(model.model(), pack, model.airfoils(), figures, prefix));
    }

    private static Section pictures(Text heading, Pictures.Source source) {
        return Section.of(heading, List.of(new Pictures(source))).on(Medium.PAGE);
    }

    private static void charts(
            List<Block> blocks, List<Block> curious, Compared model, Supplier<Charts> charts, String prefix) {
        Comparison comparison = model.comparison();
        for (int i = 0; i < comparison.packs().size(); i++) {
            PackResult pack = comparison.packs().get(i);
            String own = prefix + "-p" + (i + 1) + "-";
            Text heading =
                    Text.say("page.charts", model.model().name(), pack.pack().name());
            Pictures.Source drawn = once(() -> charts.get().onPage(comparison, pack, own));
            blocks.add(pictures(heading, () -> chosen(drawn.draw(), false)).folded());
            if (i == 0) {
                curious.add(pictures(heading, () -> chosen(drawn.draw(), true)));
            }
        }
    }

    /** Pictures that are drawn when they are first asked for, and kept. */
    private static Pictures.Source once(Pictures.Source source) {
        List<List<PagePicture>> drawn = new ArrayList<>();
        return () -> {
            if (drawn.isEmpty()) {
                drawn.add(source.draw());
            }
            return drawn.get(0);
        };
    }

    private static List<PagePicture> chosen(List<PagePicture> pictures, boolean curious) {
        return pictures.stream()
                .filter(picture -> FOR_THE_CURIOUS.contains(picture.name()) == curious)
                .toList();
    }

    /** A section that is given once where it is the same with every pack. */
    private void perPack(List<Block> blocks, Text heading, Function<Flown, List<Paragraph>> content) {
        List<List<Paragraph>> each = all.stream().map(content).toList();
        boolean once = each.size() == 1 || each.stream().distinct().count() == 1;
        for (int i = 0; i < (once ? 1 : each.size()); i++) {
            Text own = once || all.get(i).who().isEmpty()
                    ? heading
                    : Text.say("row.section.with", heading, all.get(i).who());
            if (!each.get(i).isEmpty()) {
                blocks.add(Section.of(own, each.get(i)).folded());
            }
        }
    }

    /** Throws, notes and assumed values of one model. */
    private void knowledge(List<Block> blocks, Compared compared) {
        Model model = compared.model();
        new SurfaceTexts(model)
                .sections(of("row.section.surfaces", model), of("row.section.sticks", model))
                .forEach(section -> blocks.add(section.folded()));
        List<Paragraph> notes =
                notes(Stream.concat(compared.comparison().warnings().stream(), compared.answer().notes().stream()));
        if (!notes.isEmpty()) {
            blocks.add(Section.of(of("row.section.notes", model), notes).folded());
        }
        List<Text> assumed = compared.answer().assumed().stream()
                .map(each -> Text.say("row.assumed.one", each.path(), each.value()))
                .toList();
        if (!assumed.isEmpty()) {
            Text heading = Text.say(
                    assumed.size() == 1 ? "row.section.assumed.one" : "row.section.assumed",
                    Value.count(assumed.size()));
            blocks.add(Section.of(
                            several ? Text.say("page.of", heading, model.name()) : heading,
                            List.of(Paragraph.of(Role.ASSUMPTION, Text.join(Join.COMMA, assumed))))
                    .folded());
        }
    }

    private static List<Paragraph> notes(Stream<Message> notes) {
        return notes.map(note -> Paragraph.of(Text.of(note))).toList();
    }

    /** What the words of the table mean, how far to trust them, and what to take care of. */
    private List<Block> closing() {
        List<Block> meaning = new ArrayList<>();
        models.stream()
                .map(model -> model.model().reference().name())
                .distinct()
                .forEach(reference -> meaning.add(Paragraph.say("row.meaning.mix", reference)));
        meaning.add(Paragraph.say("row.meaning.field"));
        meaning.add(Paragraph.say("row.meaning.likely"));
        List<Block> closing = new ArrayList<>();
        closing.add(Section.of(Text.say("row.section.rows"), meaning).folded());
        closing.addAll(Sections.cautions());
        return closing;
    }
}
