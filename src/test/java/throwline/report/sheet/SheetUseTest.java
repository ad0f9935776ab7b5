package throwline.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import throwline.flight.SurfaceMove;
import throwline.model.SetUp;
import throwline.model.Stick;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.report.document.Block.Checks;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Cells;
import throwline.study.FirstFlights;
import throwline.study.Handling;
import throwline.study.MoveRule;
import throwline.units.Display;
import throwline.words.Words;

/** What sheets are for: work on the bench, one page at the field, all batteries in the tray. */
class SheetUseTest {

    private static final Words WORDS = Words.load();
    private static final Page METRIC = Page.of(80, true, false, Display.metric());

    /** What stands at neutral is no work on the bench: each line moves something, and each number on the gauge counts. */
    @Test
    void each_line_of_the_bench_sheet_moves_something() {
        List<Cells> lines = SheetsTest.rows(
                        SheetsTest.documents(Fixture.orchard(), Size.Paper.A4).get(0))
                .stream()
                .filter(Cells.class::isInstance)
                .map(Cells.class::cast)
                .toList();
        assertThat(lines)
                .isNotEmpty()
                .allMatch(line -> line.cells().stream()
                        .anyMatch(
                                cell -> cell.role() == Role.HEADLINE && Double.parseDouble(SheetsTest.text(cell)) > 0));
    }

    /** One page holds six set-ups, at letters that can be read outdoors. */
    @Test
    void the_field_card_of_six_set_ups_is_one_page() throws IOException {
        for (CompareAnswer from : List.of(Fixture.orchard(), Fixture.crowded())) {
            Sheet card = SheetsTest.documents(from, Size.Paper.A4).get(1);
            assertThat(card.size().font()).isGreaterThanOrEqualTo(8);
            try (PDDocument pdf =
                    Loader.loadPDF(PdfSheet.of(card, SheetsTest.FIGURES).content())) {
                assertThat(pdf.getNumberOfPages()).isOne();
            }
        }
    }

    /** A switch that the file names stands where else there is a line to write on; both batteries are on the card. */
    @Test
    void switches_and_batteries() {
        CompareAnswer from = Fixture.orchard();
        Sheet pocket = SheetsTest.documents(from, Size.Paper.A4).get(2);
        String text = String.join("\n", SheetsTest.texts(pocket));
        from.comparison().model().packs().forEach(pack -> assertThat(text).contains("pack " + pack.name()));
        Table.Band set = BenchSheet.band(new SetUp("a", Map.of(), 0, "A up"));
        assertThat(SheetsTest.say(set.blank())).isEqualTo("switch:");
        assertThat(SheetsTest.say(set.filled())).isEqualTo("A up");
        Table.Band open = BenchSheet.band(new SetUp("a", Map.of(), 0));
        assertThat(SheetsTest.say(open.blank())).isEqualTo("switch / position");
        assertThat(open.filled().isEmpty()).isTrue();
    }

    /** Flap time, height and speed for going back are the model's own; the habit stands beside them as such. */
    @Test
    void rules_of_the_first_flights_are_the_models_own() {
        MoveRule rule = new MoveRule(
                new Handling.Mix(0.5, Math.toRadians(3), false),
                Optional.of(0.9),
                0.5,
                4,
                13,
                SurfaceMove.Return.BACK,
                Optional.of(11.2));
        FirstFlights rules = new FirstFlights(Map.of("airbrake", rule), Map.of("with camber", Optional.of(14.3)));
        CompareAnswer from = Fixture.orchard();
        SheetAnswer answer = new SheetAnswer(
                from.comparison().model(),
                from.comparison().packs().get(0),
                List.of(),
                Optional.empty(),
                rules,
                Optional.empty());
        Sheet card = new Sheets(METRIC, WORDS, Size.Paper.A4).sheets(answer).get(1);
        String steps = SheetsTest.blocks(card).stream()
                .filter(Checks.class::isInstance)
                .flatMap(checks -> ((Checks) checks).items().stream())
                .map(SheetsTest::say)
                .collect(Collectors.joining("\n"));
        assertThat(steps)
                .contains("Flap time at least airbrake 0.9 s (habit: 1 to 2 s)")
                .contains("Close at no less than 13.0 m/s: airbrake above 12 m (habit: first above 30 m")
                .contains("Raise the flaps landing flap only high up");
        FlightRules told = new FlightRules(rules);
        Stick.Pull camber = new Stick.Pull("with camber", Map.of("flaps", Math.toRadians(8)), -0.2, List.of());
        assertThat(SheetsTest.say(told.loop(camber).orElseThrow()))
                .contains("Begin with half: flaps 4.0° down, entered at 14.3 m/s or more");
        assertThat(told.loop(new Stick.Pull("plain", Map.of(), -0.2, List.of())))
                .isEmpty();
    }
}
