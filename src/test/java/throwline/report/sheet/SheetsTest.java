package throwline.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.report.ReportFile;
import throwline.report.data.SheetEntry;
import throwline.report.document.Block;
import throwline.report.document.Block.Checks;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Block.Section;
import throwline.report.document.Document;
import throwline.report.document.Figures;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Table.Band;
import throwline.report.document.Table.Cell;
import throwline.report.document.Table.Cells;
import throwline.report.document.Table.Remark;
import throwline.report.document.Table.Row;
import throwline.report.document.Text;
import throwline.report.terminal.TerminalRenderer;
import throwline.study.Headline;
import throwline.units.Display;
import throwline.units.Unit;
import throwline.words.Words;

/** Sheets from fixed results: what stands on them, where its numbers come from, and that nothing is cut. */
class SheetsTest {

    private static final Words WORDS = Words.load();
    private static final Page METRIC = Page.of(80, true, false, Display.metric());
    static final Figures FIGURES = new Figures(METRIC.onPaper(), WORDS);

    static SheetAnswer answer(CompareAnswer from, Optional<List<SheetEntry>> earlier) {
        return new SheetAnswer(
                from.comparison().model(),
                from.comparison().packs().get(0),
                from.comparison().packs().subList(1, from.comparison().packs().size()),
                earlier);
    }

    static List<Sheet> documents(CompareAnswer from, Size.Paper paper) {
        return new Sheets(METRIC, WORDS, paper).sheets(answer(from, Optional.empty()));
    }

    static List<CompareAnswer> answers() {
        return List.of(
                Fixture.orchard(),
                Fixture.crowded(),
                Fixture.nothingFound(),
                Fixture.unstable(),
                Fixture.noFlapLimits());
    }

    @Test
    void every_number_is_one_of_the_json_of_compare() {
        CompareAnswer from = Fixture.orchard();
        TraceableNumbers.check(from, documents(from, Size.Paper.A4));
    }

    /** Methods manual 18.8: on one page, with four set-ups. */
    @ParameterizedTest
    @EnumSource(Size.Paper.class)
    void the_bench_sheet_fits_on_one_page(Size.Paper paper) throws IOException {
        ReportFile bench = PdfSheet.of(documents(Fixture.orchard(), paper).get(0), FIGURES);
        try (PDDocument pdf = Loader.loadPDF(bench.content())) {
            assertThat(pdf.getNumberOfPages()).isOne();
        }
    }

    /** The HTML holds every word too, and fetches nothing. */
    @Test
    void the_html_says_the_same() {
        SheetAnswer answer = answer(Fixture.crowded(), Optional.empty());
        List<ReportFile> files = new Sheets(METRIC, WORDS, Size.Paper.LETTER).files(answer);
        for (Sheet document : documents(Fixture.crowded(), Size.Paper.LETTER)) {
            String html = files.stream()
                    .filter(file -> file.name().equals(document.name() + ".html"))
                    .map(file -> new String(file.content(), StandardCharsets.UTF_8))
                    .findFirst()
                    .orElseThrow();
            assertThat(html)
                    .contains("@page { size: 612.00pt 792.00pt")
                    .doesNotContain("http")
                    .doesNotContain("src=");
            String inOneLine =
                    html.replace("&#34;", "\"").replace('\u00a0', ' ').replaceAll("\\s+", "");
            texts(document).stream()
                    .flatMap(String::lines)
                    .forEach(said -> assertThat(inOneLine).contains(said.replaceAll("\\s+", "")));
        }
    }

    /** A sheet is a document like any other: a terminal shows all of it, with the same words. */
    @Test
    void a_terminal_shows_every_sheet() {
        for (Sheet sheet : documents(Fixture.orchard(), Size.Paper.A4)) {
            Page wide = Page.of(400, true, false, Display.metric()).onPaper();
            String shown = new TerminalRenderer(wide, WORDS, true).write(sheet.document());
            String inOneLine = shown.replace('\u00a0', ' ').replaceAll("\\s+", "");
            Sheet footless = new Sheet(sheet.name(), sheet.document(), Text.none(), sheet.size());
            texts(footless).stream()
                    .flatMap(said -> Stream.of(said.split("\\s+", -1)))
                    .forEach(word -> assertThat(inOneLine).as(sheet.name()).contains(word));
        }
    }

    @Test
    void the_same_sheet_is_the_same_file() {
        Sheet document = documents(Fixture.orchard(), Size.Paper.A4).get(1);
        assertThat(PdfSheet.of(document, FIGURES).content())
                .isEqualTo(PdfSheet.of(document, FIGURES).content());
    }

    /** Every elevator mix says that it holds with the throttle closed, and the caution stands on the sheet. */
    @Test
    void no_elevator_mix_without_its_caution() {
        Sheet bench = documents(Fixture.orchard(), Size.Paper.A4).get(0);
        assertThat(rows(bench).stream()
                        .filter(row ->
                                row instanceof Cells cells && text(cells, 1).equals(WORDS.say("sheet.bench.mix"))))
                .hasSize(3);
        assertThat(WORDS.say("sheet.bench.mix")).contains("throttle closed");
        assertThat(bench.document().blocks()).contains(Paragraph.of(Role.CAUTION, Text.say("sheet.caution.mix")));
    }

    @Test
    void motor_first() {
        for (Sheet document : documents(Fixture.orchard(), Size.Paper.A4)) {
            Block first = document.document().blocks().get(0);
            assertThat(first).isInstanceOf(Paragraph.class);
            assertThat(text((Paragraph) first)).startsWith("MOTOR FIRST");
        }
    }

    /** No card sends a model into the air that does not hold its nose by itself. */
    @Test
    void an_unstable_model_is_not_to_be_flown() {
        List<Sheet> documents = documents(Fixture.unstable(), Size.Paper.A4);
        for (Sheet card : documents) {
            List<String> top = card.document().blocks().stream()
                    .limit(4)
                    .map(block -> text((Paragraph) block))
                    .toList();
            assertThat(top.get(0)).isEqualTo("DO NOT FLY IT LIKE THIS.");
            assertThat(top.get(1)).startsWith("MOTOR FIRST");
            assertThat(top.get(2))
                    .startsWith("! Take-off flap, landing flap and airbrake: ")
                    .containsPattern("balance (point is )?too far back");
            assertThat(top.get(3)).contains("Clean: ").contains("very far back");
        }
        assertThat(blocks(documents.get(1)).stream()
                        .filter(Checks.class::isInstance)
                        .map(checks -> say(((Checks) checks).items().get(0))))
                .singleElement()
                .asString()
                .contains("move the balance forward");
    }

    /** What stands first on the screen stands first on every sheet, strong and marked by more than that. */
    @Test
    void dangers_come_before_numbers() throws IOException {
        for (Sheet sheet : documents(Fixture.orchard(), Size.Paper.A4)) {
            Paragraph danger = (Paragraph) sheet.document().blocks().get(1);
            assertThat(text(danger)).startsWith("! Clean, take-off flap and landing flap: may drop a wing");
            try (PDDocument pdf = Loader.loadPDF(PdfSheet.of(sheet, FIGURES).content())) {
                assertThat(new PDFTextStripper().getText(pdf))
                        .containsSubsequence("MOTOR FIRST", "! Clean, take-off flap and landing flap: may drop a wing");
            }
        }
    }

    @Test
    void the_first_landing_is_with_nothing_that_a_danger_rules_out() {
        String order = String.join(
                "\n", texts(documents(Fixture.orchard(), Size.Paper.A4).get(1)));
        assertThat(order)
                .doesNotContain("First landing with")
                .contains(
                        "Every set-up has a warning at the top: land first with landing flap, at 10.9 m/s, half of the flap at first (may drop a wing when slow).");
    }

    /** Nothing moved, servos that suffice, and what is not known are three things. */
    @Test
    void why_no_speed_limits_the_flaps() {
        List<Sheet> documents = documents(Fixture.noFlapLimits(), Size.Paper.A4);
        List<String> pocket = rows(documents.get(2)).stream()
                .filter(Cells.class::isInstance)
                .limit(4)
                .map(row -> text((Cells) row, 3))
                .toList();
        assertThat(pocket).containsExactly("-", "servos hold", "not known", "not known");
    }

    /** A ruler in inches does not show millimetres. */
    @Test
    void a_bench_sheet_in_inches_sets_throws_in_inches() {
        Page inches = Page.of(80, true, false, Display.metric().with(Unit.INCH));
        List<Sheet> documents =
                new Sheets(inches, WORDS, Size.Paper.LETTER).sheets(answer(Fixture.orchard(), Optional.empty()));
        Figures figures = new Figures(inches.onPaper(), WORDS);
        String bench = String.join("\n", texts(documents.get(0), figures));
        assertThat(bench).contains("Set each to within 0.04 in").doesNotContain(" mm");
        assertThat(String.join("\n", texts(documents.get(1), figures))).contains("within 0.04 in of the bench sheet");
        assertThat(String.join(
                        "\n", texts(documents(Fixture.orchard(), Size.Paper.A4).get(0))))
                .contains("Set each to within 1 mm");
    }

    /** Who reads miles an hour reads them first, with their band; m/s stand beside. */
    @Test
    void cards_begin_with_the_speed_that_was_asked_for() {
        Page miles = Page.of(80, true, false, Display.metric().with(Unit.MILE_PER_HOUR));
        List<Sheet> documents =
                new Sheets(miles, WORDS, Size.Paper.A4).sheets(answer(Fixture.orchard(), Optional.empty()));
        Figures figures = new Figures(miles.onPaper(), WORDS);
        assertThat(String.join("\n", texts(documents.get(1), figures))).contains(WORDS.say("row.stalls") + ", mph");
        Matcher pocket = Pattern.compile("clean\n([\\d.]+) mph\n([\\d.]+) mph")
                .matcher(String.join("\n", texts(documents.get(2), figures)));
        assertThat(pocket.find()).isTrue();
        double approach = ((Headline.Known) Fixture.orchard()
                        .comparison()
                        .packs()
                        .get(0)
                        .setUps()
                        .get(0)
                        .approachSpeed())
                .value();
        assertThat(0.44704 * Double.parseDouble(pocket.group(1))).isCloseTo(approach, within(0.25));
    }

    @Test
    void nothing_has_changed_since_the_same_sheet() {
        SheetAnswer same = answer(
                Fixture.orchard(),
                Optional.of(answer(Fixture.orchard(), Optional.empty()).numbers()));
        assertThat(changed(same)).isEmpty();
    }

    @Test
    void what_has_changed_is_marked_and_told() {
        List<SheetEntry> earlier = new ArrayList<>();
        for (SheetEntry e : answer(Fixture.orchard(), Optional.empty()).numbers()) {
            boolean flaps = e.setUp().equals("landing flap") && e.surface().equals("flaps");
            boolean angle = flaps && e.quantity().equals("angle");
            earlier.add(angle ? new SheetEntry(e.setUp(), "flaps", e.stick(), e.side(), "angle", "deg", "30") : e);
        }
        earlier.removeIf(e -> e.setUp().equals("airbrake") && e.surface().equals("elevator"));
        earlier.add(new SheetEntry("reflex", "flaps", "", "both", "angle", "deg", "-3"));
        SheetAnswer now = answer(Fixture.orchard(), Optional.of(earlier));
        assertThat(changed(now)).contains("down, 35.0\u00b0");
        String said = String.join(
                "\n", texts(new Sheets(METRIC, WORDS, Size.Paper.A4).sheets(now).get(0)));
        assertThat(said)
                .contains("CHANGED, before: 30.0\u00b0 down.")
                .contains("NEW: not on the earlier sheet.")
                .contains("no more: reflex flaps both");
    }

    @Test
    void what_was_expected_before_stands_on_the_field_card() {
        List<SheetEntry> earlier = answer(Fixture.orchard(), Optional.empty()).numbers().stream()
                .map(e -> e.setUp().equals("clean") && e.quantity().equals("stallSpeed")
                        ? new SheetEntry(e.setUp(), "", "", "", "stallSpeed", "m/s", "8")
                        : e.setUp().equals("clean") && e.quantity().equals("sinkRate")
                                ? new SheetEntry(e.setUp(), "", "", "", "sinkRate", "m/s", "1")
                                : e)
                .toList();
        List<String> said = texts(new Sheets(METRIC, WORDS, Size.Paper.A4)
                .sheets(answer(Fixture.orchard(), Optional.of(earlier)))
                .get(1));
        assertThat(said.stream().filter(text -> text.contains("before:")).toList())
                .hasSize(2)
                .anyMatch(text -> text.contains("before: 8.0"))
                .anyMatch(text -> text.endsWith("before: 30"));
    }

    /** Names in letters that the font of the file lacks are drawn, not lost. */
    @Test
    void names_in_any_letters() {
        Sheet plain = documents(Fixture.orchard(), Size.Paper.A4).get(2);
        Document named = new Document(
                Text.name("\u6a21\u578b"), List.of(), plain.document().blocks());
        Sheet other = new Sheet(plain.name(), named, plain.foot(), plain.size());
        assertThat(PdfSheet.of(other, FIGURES).content().length).isPositive();
    }

    private static List<String> changed(SheetAnswer answer) {
        return rows(new Sheets(METRIC, WORDS, Size.Paper.A4).sheets(answer).get(0)).stream()
                .flatMap(row -> row instanceof Cells cells ? cells.cells().stream() : Stream.empty())
                .filter(cell -> cell.role() == Role.CHANGED)
                .map(SheetsTest::text)
                .toList();
    }

    /** The blocks of a sheet, those of its sections among them. */
    static List<Block> blocks(Sheet sheet) {
        return sheet.document().blocks().stream()
                .flatMap(block -> block instanceof Section section ? section.blocks().stream() : Stream.of(block))
                .toList();
    }

    static List<Row> rows(Sheet sheet) {
        return blocks(sheet).stream()
                .flatMap(block -> block instanceof Table table ? table.rows().stream() : Stream.empty())
                .toList();
    }

    static String say(Text text) {
        return say(text, FIGURES);
    }

    private static String say(Text text, Figures figures) {
        return figures.show(text).replace('\u00a0', ' ');
    }

    static String text(Cells cells, int column) {
        return text(cells.cells().get(column));
    }

    static String text(Cell cell) {
        return text(cell, FIGURES);
    }

    private static String text(Cell cell, Figures figures) {
        return cell.lines().stream().map(line -> say(line, figures)).collect(Collectors.joining("\n"));
    }

    private static String text(Paragraph paragraph) {
        String said = (say(paragraph.lead()) + " " + say(paragraph.text())).strip();
        return paragraph.role() == Role.DANGER ? "! " + said : said;
    }

    /** What is said in sentences, and what is to be done. */
    static List<String> sentences(Sheet sheet) {
        return blocks(sheet).stream()
                .flatMap(block -> block instanceof Paragraph paragraph
                        ? Stream.of(text(paragraph))
                        : block instanceof Checks checks
                                ? checks.items().stream().map(SheetsTest::say)
                                : Stream.empty())
                .toList();
    }

    static List<String> texts(Sheet sheet) {
        return texts(sheet, FIGURES);
    }

    private static List<String> texts(Sheet sheet, Figures figures) {
        List<Text> texts = new ArrayList<>(List.of(sheet.document().title(), sheet.foot()));
        texts.addAll(sheet.document().under());
        sheet.document().blocks().stream()
                .flatMap(block -> block instanceof Section section ? Stream.of(section.heading()) : Stream.empty())
                .forEach(texts::add);
        for (Block block : blocks(sheet)) {
            if (block instanceof Paragraph paragraph) {
                texts.addAll(List.of(paragraph.lead(), paragraph.text()));
            } else if (block instanceof Checks checks) {
                texts.addAll(checks.items());
            } else if (block instanceof Table table) {
                table.columns().forEach(column -> texts.addAll(List.of(column.group(), column.head())));
            }
        }
        List<String> said =
                new ArrayList<>(texts.stream().map(text -> say(text, figures)).toList());
        for (Row row : rows(sheet)) {
            if (row instanceof Cells cells) {
                cells.cells().forEach(cell -> said.add(text(cell, figures)));
            } else if (row instanceof Band band) {
                said.addAll(
                        List.of(say(band.text(), figures), say(band.blank(), figures), say(band.filled(), figures)));
            } else if (row instanceof Remark remark) {
                said.add(say(remark.text(), figures));
            }
        }
        return said;
    }
}
