package throwline.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.model.Pack;
import throwline.report.ReportFile;
import throwline.report.data.SheetEntry;
import throwline.report.sheet.SheetAnswer;
import throwline.section.AirfoilLibrary;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.Comparison.PackResult;
import throwline.study.ComparisonStudy;
import throwline.study.FirstFlightStudy;
import throwline.study.Learnt;
import throwline.study.Lessons;
import throwline.units.Display;

/**
 * Files of all sheets of a model with one pack.
 *
 * @param files the files
 * @param allFound true where no number on them is missing
 */
record SheetRun(List<ReportFile> files, boolean allFound) {

    /**
     * Works out the numbers and draws the sheets.
     *
     * @param context of the command
     * @param options paper
     * @param display units
     * @param model the model
     * @param library its airfoils
     * @param pack the pack that the sheets are for; the other packs stand on the pocket card
     * @param earlier numbers of an earlier sheet, to mark what has changed; empty for none
     * @param flights what flights tell of a comparison
     */
    static SheetRun of(
            Context context,
            SheetOptions options,
            Display display,
            Model model,
            AirfoilLibrary library,
            Pack pack,
            Optional<List<SheetEntry>> earlier,
            Function<Comparison, Optional<Lessons>> flights) {
        context.terminal().progress(context.words().say("cli.compare.working", model.name()));
        List<Pack> packs = Stream.concat(Stream.of(pack), model.packs().stream().filter(other -> !other.equals(pack)))
                .toList();
        Comparison comparison =
                new ComparisonStudy(new MeasuredSections(), Bands.load()).compare(model, library, packs);
        Optional<Learnt> learnt = flights.apply(comparison).map(Lessons::learnt);
        context.terminal().progress(context.words().say("cli.compare.drawing"));
        List<PackResult> found = learnt.map(Learnt::after).orElse(comparison).packs();
        SheetAnswer answer = new SheetAnswer(
                model,
                found.get(0),
                found.subList(1, found.size()),
                earlier,
                new FirstFlightStudy(new MeasuredSections()).rules(comparison.model(), library, pack),
                learnt);
        boolean all = answer.pack().setUps().stream()
                .allMatch(setUp -> setUp.headlines().isComplete());
        return new SheetRun(options.files(context, display, answer), all);
    }

    /** What was written, in a sentence. */
    String written(Context context, Path folder) {
        String names = String.join(", ", files.stream().map(ReportFile::name).toList());
        return context.words().say("cli.sheet.done", names, folder);
    }
}
