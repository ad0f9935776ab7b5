package throwline.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.input.ModelFile;
import throwline.input.PackedAirfoils;
import throwline.input.ReadModel;
import throwline.model.Model;
import throwline.report.CompareAnswer;
import throwline.report.ElevatorMixes;
import throwline.report.Page;
import throwline.report.data.SheetCsv;
import throwline.report.document.Table.Cells;
import throwline.section.MeasuredSections;
import throwline.study.Bands;
import throwline.study.Comparison;
import throwline.study.ComparisonStudy;
import throwline.study.FlightQuantity;
import throwline.study.SetUpResult;
import throwline.units.Display;
import throwline.words.Words;

/** What the bench asks (methods manual 18.7 to 18.9), with numbers that were worked out for an invented example. */
class SheetStoriesTest {

    private static final PackedAirfoils AIRFOILS = new PackedAirfoils();
    private static final Model MODEL =
            ((ReadModel.Project) ModelFile.read(Path.of("examples", "orchard.yaml"), AIRFOILS)).model();
    private static final Comparison COMPARISON = new ComparisonStudy(new MeasuredSections(), Bands.load())
            .compare(MODEL, AIRFOILS, MODEL.packs().subList(0, 1));

    private final SheetAnswer answer = new SheetAnswer(MODEL, COMPARISON.packs().get(0), List.of(), Optional.empty());
    private final List<Sheet> documents =
            new Sheets(Page.of(80, true, false, Display.metric()), Words.load(), Size.Paper.A4).sheets(answer);

    /** Methods manual 18.7: the elevator at three speeds for each set-up, its sense in words, and half of it for the first flight. */
    @Test
    void compensationAtThreeSpeeds() {
        List<ElevatorMixes.Mix> mixes = ElevatorMixes.of(MODEL, answer.pack().setUps());
        assertThat(mixes).hasSize(3 * 3);
        for (ElevatorMixes.Mix mix : mixes) {
            boolean little = Math.abs(Math.toDegrees(mix.change())) < 2;
            assertThat(mix.half()).isEqualTo(little ? 0 : mix.change() / 2);
        }
        for (SetUpResult result : answer.pack().setUps()) {
            mixes.stream()
                    .filter(mix -> mix.setUp().equals(result.setUp().name()))
                    .findFirst()
                    .ifPresent(mix -> result.number(FlightQuantity.ELEVATOR_CHANGE)
                            .known()
                            .ifPresent(change -> assertThat(mix.change()).isBetween(change.low(), change.high())));
        }
    }

    /** Methods manual 18.8: millimetres from chord and angle by hand, to 0.1 mm; a servo angle beside each. */
    @Test
    void throwsForTheBench() {
        double chord = 0.25 * (300 - 75 * (300 - 235) / 920.0);
        Cells flaps = SheetsTest.rows(documents.get(0)).stream()
                .filter(row ->
                        row instanceof Cells cells && SheetsTest.text(cells, 3).equals("down, 35.0\u00b0"))
                .map(Cells.class::cast)
                .findFirst()
                .orElseThrow();
        double angle = Math.toRadians(35);
        assertThat(number(flaps, 2)).isCloseTo(2 * chord * Math.sin(angle / 2), within(0.1));
        assertThat(Double.parseDouble(
                        SheetsTest.text(flaps, 4).replace("down, ", "").replace("\u00b0", "")))
                .isBetween(25.0, 35.0);
        assertThat(number(flaps, 6)).isEqualTo(number(flaps, 2));
    }

    private static double number(Cells row, int column) {
        return Double.parseDouble(SheetsTest.text(row, column));
    }

    /** Methods manual 18.9: surfaces of each set-up in per cent of their travel, out to a spreadsheet and back without loss. */
    @Test
    void switchCard() {
        String card = cells(documents.get(2));
        // 35 of 60 degrees of flap, 14 of 28 degrees of aileron.
        assertThat(card).contains("58 % down", "50 % up");
        String csv = SheetCsv.write("Orchard", "small", answer.numbers());
        assertThat(SheetCsv.read(csv).entries()).isEqualTo(answer.numbers());
    }

    @Test
    void everyNumberIsOneOfTheJsonOfCompare() {
        TraceableNumbers.check(new CompareAnswer(COMPARISON, List.of(), List.of()), documents);
    }

    private static String cells(Sheet document) {
        StringBuilder text = new StringBuilder();
        SheetsTest.rows(document).forEach(row -> {
            if (row instanceof Cells cells) {
                cells.cells().forEach(cell -> text.append(SheetsTest.text(cell)).append('\n'));
            }
        });
        return text.toString();
    }
}
