package throwline.window;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import throwline.model.Model;
import throwline.report.Page;
import throwline.report.answer.HandAnswer;
import throwline.report.chart.Charts;
import throwline.report.document.Block.Depth;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Comparison;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Text;
import throwline.study.Comparison.PackResult;
import throwline.study.Learnt;
import throwline.study.SetUpResult;
import throwline.units.Display;
import throwline.window.session.HandComputer;
import throwline.words.Words;

/** Maker of views of an answer, on the thread that found it. */
final class HandViewMaker {

    private static final int COLUMNS = 100;

    private final PaintedShots painted = new PaintedShots();
    private final Words words;
    private final Supplier<Display> display;
    private final Supplier<Ink> ink;
    private final Function<Model, Optional<Learnt>> flights;

    /**
     * @param words the sentences
     * @param display units of the model that is open
     * @param ink how pictures are painted now
     * @param flights what flights told of a model
     */
    HandViewMaker(
            Words words, Supplier<Display> display, Supplier<Ink> ink, Function<Model, Optional<Learnt>> flights) {
        this.flights = flights;
        this.words = words;
        this.display = display;
        this.ink = ink;
    }

    /** Flights were flown with the set-ups as the file has them: where a hand has moved one, they do not count. */
    HandView make(HandComputer.Answer found) {
        FlownAnswer flown = FlownAnswer.of(found, flights);
        HandComputer.Answer answer = flown.answer();
        var question = answer.question();
        String own = answer.now().setUp().name();
        Optional<SetUpResult> against = answer.against()
                .map(other -> other.setUp().name().equals(own) ? other.named(words.say("window.before")) : other);
        Model model = question.model();
        HandAnswer said = HandAnswer.of(model, question.pack(), answer.density(), answer.now(), against);
        Page page = Page.of(COLUMNS, true, false, display.get());
        Figures figures = new Figures(page, words);
        List<SetUpResult> both = new ArrayList<>(List.of(answer.now()));
        against.ifPresent(both::add);
        Ink look = ink.get();
        List<HandView.Shot> shots = painted.kept(new Charts(words, page.besideSpeed())
                .atHand(model, new PackResult(question.pack(), both), figures).stream()
                        .map(look::shot)
                        .toList());
        return new HandView(
                question.number(),
                answer.now().setUp(),
                answer.isFinished(),
                Stream.concat(
                                flown.said(words, figures).stream(),
                                said.inShort().stream().map(each -> said(each, figures)))
                        .sorted(Comparator.comparing(each -> !each.danger()))
                        .toList(),
                lines(said.rows(), figures, answer.bandsComeLater()),
                against.map(other -> other.setUp().name()).orElse(""),
                shots,
                said.rows(),
                answer.now(),
                ThrottleLine.of(words, figures, answer));
    }

    private static HandView.Said said(Paragraph paragraph, Figures figures) {
        return new HandView.Said(
                paragraph.role() == Role.DANGER, figures.show(paragraph.lead()), figures.show(paragraph.text()));
    }

    private List<HandView.Line> lines(Comparison rows, Figures figures, boolean bandsComeLater) {
        List<HandView.Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.rows().size(); i++) {
            Comparison.Row row = rows.rows().get(i);
            List<Comparison.Cell> cells = row.cells().get(0);
            if (!cells.isEmpty()) {
                lines.add(first(i, row, cells, figures, bandsComeLater));
                row.below().stream().filter(below -> !isBand(below)).forEach(below -> {
                    List<Text> texts = below.cells().get(0);
                    if (texts.stream().anyMatch(text -> !text.isEmpty())) {
                        lines.add(new HandView.Line(
                                lines.get(lines.size() - 1).row(),
                                false,
                                figures.show(below.label()),
                                shown(texts, 0, figures),
                                "",
                                shown(texts, 1, figures),
                                false,
                                false,
                                below.depth() == Depth.DETAIL || row.depth() == Depth.DETAIL));
                    }
                });
            }
        }
        return lines;
    }

    private HandView.Line first(
            int index, Comparison.Row row, List<Comparison.Cell> cells, Figures figures, boolean bandsComeLater) {
        boolean working = isWorking(cells.get(0));
        String family = figures.show(row.family());
        String label = figures.show(row.label());
        Optional<Comparison.Below> band =
                row.below().stream().filter(HandViewMaker::isBand).findFirst();
        String likely = working || (bandsComeLater && band.isPresent())
                ? ""
                : band.map(below -> shown(below.cells().get(0), 0, figures)).orElse("");
        boolean close = cells.size() > 1 && isClose(cells.get(0), cells.get(1));
        return new HandView.Line(
                index,
                true,
                family.isEmpty() ? label : family + ", " + label,
                shown(cells.get(0), figures),
                likely,
                cells.size() > 1 ? shown(cells.get(1), figures) : "",
                working,
                close,
                row.depth() == Depth.DETAIL);
    }

    private String shown(Comparison.Cell cell, Figures figures) {
        return isWorking(cell) ? words.say("window.working") : figures.show(cell.text());
    }

    private static boolean isClose(Comparison.Cell cell, Comparison.Cell other) {
        return cell.number()
                .filter(Comparison.Measured::drawn)
                .flatMap(own -> other.number().filter(number -> own.known().tooCloseTo(number.known())))
                .isPresent();
    }

    private static boolean isWorking(Comparison.Cell cell) {
        return cell.reason().equals(Text.say(SetUpResult.WORKING));
    }

    private static boolean isBand(Comparison.Below below) {
        return below.label().equals(Text.say("row.likely"));
    }

    private static String shown(List<Text> texts, int index, Figures figures) {
        return index < texts.size() ? figures.show(texts.get(index)) : "";
    }
}
