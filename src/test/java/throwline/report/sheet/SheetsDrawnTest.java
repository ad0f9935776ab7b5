package throwline.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import throwline.model.SetUp;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.report.document.Figures;
import throwline.study.Comparison;
import throwline.study.SetUpResult;
import throwline.units.Display;
import throwline.units.Unit;
import throwline.words.Words;

/** Sheets as they are drawn: nothing is cut, nothing covers anything else, and cards stay one card. */
class SheetsDrawnTest {

    private static final Words WORDS = Words.load();
    private static final Page METRIC = Page.of(80, true, false, Display.metric());
    private static final Display IMPERIAL = Display.metric().with(List.of(Unit.INCH, Unit.MILE_PER_HOUR, Unit.OUNCE));

    /** Every letter lies inside the part that is used, and every word of the sheet is in the file. */
    @ParameterizedTest
    @EnumSource(Size.Paper.class)
    void nothing_is_cut(Size.Paper paper) throws IOException {
        Figures figures = SheetsTest.FIGURES;
        for (CompareAnswer from : SheetsTest.answers()) {
            for (Sheet document : SheetsTest.documents(from, paper)) {
                Letters letters = new Letters();
                String text;
                try (PDDocument pdf =
                        Loader.loadPDF(PdfSheet.of(document, figures).content())) {
                    text = letters.getText(pdf);
                }
                Size size = PdfSheet.size(document, SheetsTest.FIGURES);
                for (TextPosition letter : letters.all) {
                    assertThat((double) letter.getX()).isGreaterThanOrEqualTo(size.left());
                    assertThat((double) letter.getX() + letter.getWidth())
                            .isLessThanOrEqualTo(size.left() + size.cardWidth());
                    assertThat((double) letter.getY()).isBetween(size.top(), size.top() + size.cardHeight());
                }
                String inOneLine = text.replace('\u00a0', ' ').replaceAll("\\s+", "");
                for (String said : SheetsTest.texts(document)) {
                    for (String word : said.split("\\s+", -1)) {
                        assertThat(inOneLine).as(document.name()).contains(word);
                    }
                }
            }
        }
    }

    /** No sentence ends in a line of one word, which the eye takes for something else. */
    @Test
    void no_sentence_leaves_a_word_alone() throws IOException {
        int sentences = 0;
        for (CompareAnswer from : SheetsTest.answers()) {
            for (Sheet sheet : SheetsTest.documents(from, Size.Paper.A4)) {
                List<String> lines;
                try (PDDocument pdf =
                        Loader.loadPDF(PdfSheet.of(sheet, SheetsTest.FIGURES).content())) {
                    lines = new PDFTextStripper()
                            .getText(pdf)
                            .replace('\u00a0', ' ')
                            .lines()
                            .map(String::strip)
                            .toList();
                }
                for (String said : SheetsTest.sentences(sheet)) {
                    String[] words = said.split(" ", -1);
                    sentences += words.length > 3 && !lines.contains(said) ? 1 : 0;
                    assertThat(words.length > 3 && lines.contains(words[words.length - 1]))
                            .as(sheet.name() + ": " + said)
                            .isFalse();
                }
            }
        }
        assertThat(sentences).isGreaterThan(20);
    }

    /** What is meant for the tray is one card, with its dangers, two batteries, six set-ups, their switches and all sticks. */
    @ParameterizedTest
    @EnumSource(Size.Paper.class)
    void the_pocket_card_is_one_card(Size.Paper paper) throws IOException {
        for (CompareAnswer from : List.of(Fixture.orchard(), longSwitches(Fixture.crowded()))) {
            for (Page page : List.of(METRIC, Page.of(80, true, false, IMPERIAL))) {
                Figures figures = new Figures(page.onPaper(), WORDS);
                Sheet pocket = new Sheets(page, WORDS, paper)
                        .sheets(SheetsTest.answer(from, Optional.empty()))
                        .get(2);
                assertThat(String.join("\n", SheetsTest.texts(pocket))).contains("pack ");
                try (PDDocument pdf =
                        Loader.loadPDF(PdfSheet.of(pocket, figures).content())) {
                    assertThat(pdf.getNumberOfPages()).isOne();
                }
            }
        }
        assertThat(PdfSheet.size(SheetsTest.documents(Fixture.orchard(), paper).get(2), SheetsTest.FIGURES)
                        .cardHeight())
                .isLessThan(170 * 72 / 25.4);
    }

    /** No word runs into the next: letters on one line stand beside each other, headings over columns as well. */
    @ParameterizedTest
    @EnumSource(Size.Paper.class)
    void no_text_runs_into_another(Size.Paper paper) throws IOException {
        List<CompareAnswer> all = new ArrayList<>(SheetsTest.answers());
        all.add(longSwitches(Fixture.crowded()));
        for (CompareAnswer from : all) {
            for (Page page : List.of(METRIC, Page.of(80, true, false, IMPERIAL))) {
                Figures figures = new Figures(page.onPaper(), WORDS);
                for (Sheet document :
                        new Sheets(page, WORDS, paper).sheets(SheetsTest.answer(from, Optional.empty()))) {
                    Letters letters = new Letters();
                    try (PDDocument pdf =
                            Loader.loadPDF(PdfSheet.of(document, figures).content())) {
                        letters.getText(pdf);
                    }
                    assertThat(letters.overlaps()).as(document.name()).isEmpty();
                }
            }
        }
    }

    /** The same with a switch position of two words, as transmitters print them, on every set-up. */
    private static CompareAnswer longSwitches(CompareAnswer from) {
        List<Comparison.PackResult> packs = from.comparison().packs().stream()
                .map(pack -> new Comparison.PackResult(
                        pack.pack(),
                        pack.setUps().stream().map(SheetsDrawnTest::longSwitch).toList()))
                .toList();
        Comparison c = from.comparison();
        return new CompareAnswer(
                new Comparison(c.model(), c.density(), packs, c.warnings()), from.assumed(), List.of());
    }

    private static SetUpResult longSwitch(SetUpResult r) {
        SetUp s = r.setUp();
        return new SetUpResult(
                new SetUp(s.name(), s.deflections(), s.elevator(), "left slider at the lower end"),
                r.headlines(),
                r.firstStall(),
                r.sweep(),
                r.load(),
                r.servos(),
                r.field(),
                r.oneSided(),
                r.notes());
    }

    /** Where each letter stands. */
    private static final class Letters extends PDFTextStripper {
        /** Letters may lean this far into each other, points: kerning, and the line around strong ones. */
        private static final double LEAN = 0.8;

        private final List<TextPosition> all = new ArrayList<>();
        private final Map<String, List<TextPosition>> lines = new TreeMap<>();

        /** Letters that begin before the one on their left ends, with that one. */
        List<String> overlaps() {
            List<String> found = new ArrayList<>();
            lines.values().forEach(line -> {
                line.sort(java.util.Comparator.comparingDouble(TextPosition::getX));
                for (int i = 1; i < line.size(); i++) {
                    TextPosition left = line.get(i - 1);
                    if (line.get(i).getX() < left.getX() + left.getWidth() - LEAN) {
                        found.add(left.getUnicode() + line.get(i).getUnicode() + " at " + left.getX() + ", "
                                + left.getY());
                    }
                }
            });
            return found;
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            all.add(text);
            String line = getCurrentPageNo() + " " + Math.round(text.getY());
            lines.computeIfAbsent(line, l -> new ArrayList<>()).add(text);
            super.processTextPosition(text);
        }
    }
}
