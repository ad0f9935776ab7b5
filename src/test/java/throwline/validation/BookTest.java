package throwline.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import throwline.input.PackedAirfoils;
import throwline.report.Page;
import throwline.report.answer.BookFiles;
import throwline.report.document.Figures;
import throwline.section.MeasuredSections;
import throwline.section.computed.LearnedAirfoils;
import throwline.units.Display;
import throwline.words.Words;

/** The book of the cases under {@code validation/}, and what was written down from it. */
class BookTest {

    private static final Path CASES = Path.of("validation");
    private static final String BEGIN = "<!-- validation table: begin -->";
    private static final String END = "<!-- validation table: end -->";
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]+(\\.[0-9]+)?");
    private static final Book BOOK = book();

    static Book book() {
        try {
            return new Validation(new MeasuredSections(), new PackedAirfoils()).run(CaseFolder.at(CASES));
        } catch (UnreadableCase e) {
            throw new AssertionError(e);
        }
    }

    /** Bands stated at 90 % must hold 80 to 97 % of what was measured, for every quantity with ten or more values. */
    @Test
    void bandsHoldWhatTheySay() {
        Map<String, List<Statistics>> byQuantity = BOOK.statistics().stream()
                .filter(s -> s.stated().isPresent())
                .collect(Collectors.groupingBy(s -> s.figure().key()));
        int quantities = 0;
        for (Map.Entry<String, List<Statistics>> entry : byQuantity.entrySet()) {
            int values = entry.getValue().stream().mapToInt(Statistics::values).sum();
            double inside = entry.getValue().stream()
                    .mapToDouble(s -> s.values() * s.inside().orElseThrow())
                    .sum();
            if (values >= 10) {
                quantities++;
                assertThat(inside / values).as(entry.getKey()).isBetween(0.80, 0.97);
            }
        }
        assertThat(quantities).isGreaterThanOrEqualTo(6);
    }

    /**
     * Stall speeds of two set-ups of one aircraft: their ratio must lie nearer than either speed does, by as much as their
     * bands say that errors are shared. Four aircraft are too few for a share of nine in ten: all must be inside.
     */
    @Test
    void whatSetUpsHaveInCommonCancels() {
        BandRow speed = BOOK.stated().stream()
                .filter(row -> row.quantity().equals(Figure.STALL_SPEED.key()))
                .findFirst()
                .orElseThrow();
        double ratio = speed.relative() * Math.sqrt(2 * (1 - speed.shared() * speed.shared()));
        assertThat(ratio).isLessThan(0.7 * speed.relative());
        List<Pair> pairs = BOOK.cases().stream()
                .flatMap(c -> c.pairs().stream())
                .filter(p -> p.figure() == Figure.STALL_SPEED_RATIO)
                .toList();
        assertThat(pairs).hasSizeGreaterThanOrEqualTo(4).allMatch(p -> Math.abs(p.error()) < ratio);
    }

    /** The file that every command reads is the one that the book writes; the last digit may differ. */
    @Test
    void theFileOfBandsIsTheBooks() {
        List<String> stated = BOOK.stated().stream().map(BandRow::line).toList();
        List<String> written = BOOK.bands().stream().map(BandRow::line).toList();
        assertThat(stated).hasSameSizeAs(written);
        for (int i = 0; i < stated.size(); i++) {
            assertAlike(stated.get(i), written.get(i));
        }
    }

    /** What is learned from the library is what the library says today. */
    @Test
    void whatIsLearnedIsTheBooks() {
        List<String> stated = LearnedAirfoils.load().text().lines().toList();
        List<String> written = BOOK.learned().text().lines().toList();
        assertThat(stated).hasSameSizeAs(written).hasSizeGreaterThan(30);
        for (int i = 0; i < stated.size(); i++) {
            assertAlike(stated.get(i), written.get(i));
        }
    }

    @Test
    void theReadmeOfTheCasesShowsTheTable() throws IOException {
        assertTable(Files.readString(CASES.resolve("README.md")));
    }

    @Test
    void theReadmeShowsTheTable() throws IOException {
        assertTable(Files.readString(Path.of("README.md")));
    }

    private static void assertTable(String readme) {
        assertThat(readme).contains(BEGIN).contains(END);
        List<String> shown = readme.substring(readme.indexOf(BEGIN) + BEGIN.length(), readme.indexOf(END))
                .strip()
                .lines()
                .toList();
        Page page = Page.of(100, true, false, Display.metric());
        List<String> made = new BookFiles(new Figures(page, Words.load()))
                .summary(BOOK)
                .strip()
                .lines()
                .toList();
        assertThat(shown).hasSameSizeAs(made);
        for (int i = 0; i < shown.size(); i++) {
            assertAlike(shown.get(i), made.get(i));
        }
    }

    /** The same text with the same numbers, but for one in the last digit of decimals. */
    private static void assertAlike(String a, String b) {
        assertThat(NUMBER.matcher(a).replaceAll("#").replace("+#", "#").replace("-#", "#"))
                .isEqualTo(NUMBER.matcher(b).replaceAll("#").replace("+#", "#").replace("-#", "#"));
        Matcher left = NUMBER.matcher(a);
        Matcher right = NUMBER.matcher(b);
        while (left.find() && right.find()) {
            int dot = left.group().indexOf('.');
            double last = dot < 0 ? 0 : Math.pow(10, dot + 1 - left.group().length());
            assertThat(Math.abs(Double.parseDouble(left.group()) - Double.parseDouble(right.group())))
                    .as(a + " against " + b)
                    .isLessThanOrEqualTo(1.01 * last);
        }
    }
}
