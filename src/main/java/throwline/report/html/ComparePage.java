package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.Sentences;
import throwline.report.chart.Charts;
import throwline.report.document.Figures;
import throwline.report.document.PagePicture;
import throwline.report.table.FlownIn;
import throwline.report.table.GlanceRows;
import throwline.report.table.SetUpNotes;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.units.Dimension;
import throwline.units.QuantityPrinter;
import throwline.words.Words;

/** A comparison as one page: what to take away first, then numbers, charts, throws, what to know, the model files. */
public final class ComparePage {

    /** Charts in the language of engineers, which come last. */
    private static final Set<String> FOR_THE_CURIOUS = Set.of("load", "drag-lift");

    private final Words words;
    private final CardMaker cards;

    /** A page in these words. */
    public ComparePage(Words words) {
        this.words = words;
        cards = new CardMaker(words);
    }

    /** The page of all models, as HTML. */
    public String write(List<Compared> models) {
        List<Flown> flown = new ArrayList<>();
        models.forEach(model ->
                model.answer().comparison().packs().forEach(pack -> flown.add(flown(model, pack, models.size() > 1))));
        List<Part> parts = new ArrayList<>();
        List<Part> curious = new ArrayList<>();
        for (int i = 0; i < models.size(); i++) {
            verdicts(parts, models.get(i), models.size() > 1);
        }
        for (int i = 0; i < models.size(); i++) {
            setUps(parts, models.get(i), "m" + (i + 1) + "-");
        }
        parts.add(new Part.Cards(words.say("page.cards"), words.say("page.cards.intro"), cards.cards(flown)));
        for (int i = 0; i < models.size(); i++) {
            charts(parts, curious, models.get(i), "m" + (i + 1));
        }
        for (Compared model : models) {
            knowledge(parts, model, models.size() > 1);
        }
        parts.add(new Part.Caution(
                words.say("page.caution"), List.of(words.say("row.caution"), words.say("row.meaning.likely"))));
        parts.add(new Part.Folded(words.say("page.curious"), curious));
        for (Compared model : models) {
            parts.add(Part.Enclosed.of(words, model.fileName(), model.fileText()));
        }
        return new HtmlPage(title(models), under(models), parts).html();
    }

    private String title(List<Compared> models) {
        List<String> names = models.stream()
                .map(model -> model.answer().comparison().model().name())
                .toList();
        return new CloseCalls(words).and(names);
    }

    private List<String> under(List<Compared> models) {
        List<String> lines = new ArrayList<>();
        for (Compared model : models) {
            Comparison comparison = model.answer().comparison();
            QuantityPrinter printer = new QuantityPrinter(model.page().units());
            String air = new FlownIn(words, printer).say(comparison);
            String name = comparison.model().name();
            boolean several = models.size() > 1;
            lines.add(several ? words.say("page.named", name, air) : air);
            comparison.packs().forEach(pack -> {
                String line = pack(pack.pack(), printer);
                lines.add(several ? words.say("page.named", name, line) : line);
            });
        }
        return lines;
    }

    private String pack(Pack pack, QuantityPrinter printer) {
        return words.say(
                "row.pack",
                pack.name(),
                printer.print(pack.mass(), Dimension.MASS),
                printer.print(pack.balance(), Dimension.LENGTH));
    }

    private Flown flown(Compared model, PackResult pack, boolean several) {
        Comparison comparison = model.answer().comparison();
        String name = comparison.model().name();
        boolean packs = comparison.packs().size() > 1;
        String with = words.say("page.pack", pack.pack().name());
        String who = several ? packs ? words.say("page.of", name, with) : name : packs ? with : "";
        String air = words.say("page.air", String.format(Locale.ROOT, "%.3f", comparison.density()));
        return new Flown(who, comparison.model(), pack, air, model.page());
    }

    private void verdicts(List<Part> parts, Compared model, boolean several) {
        Comparison comparison = model.answer().comparison();
        Verdicts verdicts = new Verdicts(model.page(), words);
        for (int i = 0; i < comparison.packs().size(); i++) {
            PackResult pack = comparison.packs().get(i);
            String who = flown(model, pack, several).who();
            String heading = who.isEmpty() ? words.say("page.verdict") : words.say("page.verdict.with", who);
            List<String> said = verdicts.of(new Situation(comparison, pack));
            Part verdict = Part.Verdict.of(i == 0 ? heading : "", said);
            boolean warns = pack.setUps().stream().anyMatch(setUp -> setUp.isNoted("note.unstable"));
            Part open = i == 0 ? verdict : Part.Verdict.of(heading, said);
            parts.add(i == 0 || warns ? open : new Part.Folded(heading, List.of(verdict)));
        }
    }

    /** Pictures of the set-ups with the first pack; the others differ from them by what the cards say. */
    private void setUps(List<Part> parts, Compared model, String prefix) {
        Comparison comparison = model.answer().comparison();
        PackResult pack = comparison.packs().get(0);
        parts.add(Part.Pictures.of(
                words.say(
                        "page.setup.pictures",
                        comparison.model().name(),
                        pack.pack().name()),
                new Charts(words, model.page().besideSpeed())
                        .setUps(comparison.model(), pack, model.airfoils(), new Figures(model.page(), words), prefix)));
    }

    private void charts(List<Part> parts, List<Part> curious, Compared model, String prefix) {
        Comparison comparison = model.answer().comparison();
        Charts charts = new Charts(words, model.page().besideSpeed());
        for (int i = 0; i < comparison.packs().size(); i++) {
            PackResult pack = comparison.packs().get(i);
            String own = prefix + "-p" + (i + 1) + "-";
            List<PagePicture> pictures = charts.onPage(comparison, pack, own);
            String heading = words.say(
                    "page.charts", comparison.model().name(), pack.pack().name());
            Part shown = Part.Pictures.of(i == 0 ? heading : "", chosen(pictures, false));
            parts.add(i == 0 ? shown : new Part.Folded(heading, List.of(shown)));
            if (i == 0) {
                curious.add(Part.Pictures.of(heading, chosen(pictures, true)));
            }
        }
    }

    private static List<PagePicture> chosen(List<PagePicture> pictures, boolean curious) {
        return pictures.stream()
                .filter(picture -> FOR_THE_CURIOUS.contains(picture.name()) == curious)
                .toList();
    }

    /** Throws, notes and assumed values of one model. */
    private void knowledge(List<Part> parts, Compared compared, boolean several) {
        Comparison comparison = compared.answer().comparison();
        Model model = comparison.model();
        Sentences sentences = new Sentences(words, compared.page().units());
        GlanceRows rows = new GlanceRows(compared.page(), words);
        parts.add(new Part.Cards(
                heading("page.surfaces", model, several),
                words.say("page.surfaces.intro"),
                cards.surfaces(model, compared.page())));
        sentences(parts, heading("page.sticks", model, several), rows.sticks(model));
        for (PackResult pack : comparison.packs()) {
            String who = flown(compared, pack, several).who();
            String heading = words.say("page.setups");
            sentences(
                    parts,
                    who.isEmpty() ? heading : words.say("page.of", heading, who),
                    new SetUpNotes(words, sentences).of(pack.setUps()));
        }
        sentences(
                parts,
                heading("page.notes", model, several),
                Stream.concat(comparison.warnings().stream(), compared.answer().notes().stream())
                        .map(sentences::say)
                        .toList());
        sentences(
                parts,
                heading("page.assumed", model, several),
                compared.answer().assumed().stream()
                        .map(assumed -> words.say("page.assumed.one", assumed.path(), assumed.value()))
                        .collect(Collectors.toList()));
    }

    private String heading(String key, Model model, boolean several) {
        return several ? words.say("page.of", words.say(key), model.name()) : words.say(key);
    }

    private static void sentences(List<Part> parts, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            parts.add(new Part.Sentences(heading, sentences));
        }
    }
}
