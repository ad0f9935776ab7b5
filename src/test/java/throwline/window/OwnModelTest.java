package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import throwline.input.Interview;
import throwline.input.NewModelFile;
import throwline.input.PackedAirfoils;
import throwline.report.ReportFile;
import throwline.report.sheet.Size;
import throwline.section.MeasuredSections;
import throwline.window.session.BinaryFiles;
import throwline.window.session.Disk;
import throwline.window.session.Journal;
import throwline.window.session.KeptAnswers;
import throwline.window.session.Opening;
import throwline.window.session.SafeFile;
import throwline.window.session.Session;
import throwline.window.session.Unsaved;
import throwline.window.session.Wizard;
import throwline.words.Words;

/** The way of a person with an own model: questions, a saved file, a bench sheet on paper. */
class OwnModelTest {

    /** Answers by a piece of their question, in the order in which they are asked; what is not here is left empty. */
    static final Map<String, String> ANSWERS = answers();

    private static Map<String, String> answers() {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("What is your model called?", "Quince");
        answers.put("Span, tip to tip?", "1700 mm");
        answers.put("Chord at the middle", "280 mm");
        answers.put("Chord at the tip?", "220 mm");
        answers.put("How thick is it", "34 mm");
        answers.put("Where does the wing sit", "high");
        answers.put("Weight ready to fly", "2.6 kg");
        answers.put("Where does it balance, behind", "78 mm");
        answers.put("Flaps: where do they begin", "70 mm");
        answers.put("Flaps: where do they end", "430 mm");
        answers.put("Ailerons: where do they begin", "440 mm");
        answers.put("Ailerons: where do they end", "820 mm");
        answers.put("From the leading edge of the wing to that", "760 mm");
        answers.put("Span of the tail", "540 mm");
        answers.put("Chord of the tail", "155 mm");
        answers.put("Diameter of the propeller", "13 in");
        answers.put("Diameter of the main wheels", "80 mm");
        return answers;
    }

    @TempDir
    private Path folder = Path.of("");

    private final Words words = Words.load();
    private final Disk disk = new Disk();

    private KeptAnswers kept() {
        return new KeptAnswers(folder.resolve("state"), disk);
    }

    private Wizard wizard(Interview interview) {
        interview.resume(kept().read());
        return Wizard.ofModel(words, interview, answers -> kept().keep(answers));
    }

    /** What this person answers to a page: what is typed, or the choice that is chosen first. */
    static String answer(Wizard.Page page) {
        return ANSWERS.entrySet().stream()
                .filter(each -> page.sentence().startsWith(each.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> page.choices().stream()
                        .filter(Wizard.Choice::chosen)
                        .map(Wizard.Choice::answer)
                        .findFirst()
                        .orElse(""));
    }

    private static void answerUntil(Wizard wizard, String sentence) {
        for (Optional<Wizard.Page> page = wizard.page();
                page.isPresent() && !page.get().sentence().startsWith(sentence);
                page = wizard.page()) {
            assertThat(wizard.answer(answer(page.get())))
                    .as(page.get().sentence())
                    .isEmpty();
        }
    }

    @Test
    void from_the_first_question_to_a_bench_sheet_on_paper() throws IOException {
        Interview interview = new Interview();
        Wizard wizard = wizard(interview);
        assertThat(wizard.page().orElseThrow().mayGoBack()).isFalse();

        // Wrong answers leave the page where it is, with a sentence that says what is right.
        assertThat(wizard.answer("")).hasValue(words.say("window.new.needed"));
        answerUntil(wizard, "Span, tip");
        assertThat(wizard.answer("a lot").orElseThrow()).contains("a lot");
        assertThat(wizard.answer("1700 kg")).isPresent();
        assertThat(wizard.page().orElseThrow().number()).isEqualTo(2);

        // Back proposes what was answered.
        assertThat(wizard.answer("1700 mm")).isEmpty();
        assertThat(wizard.back()).isEmpty();
        assertThat(wizard.page().orElseThrow().proposal()).isEqualTo("1700 mm");
        assertThat(wizard.page().orElseThrow().number()).isEqualTo(2);
        answerUntil(wizard, "Flaps: where do they end");

        // Interrupted: another time goes on at the same question, and can still go back.
        Interview later = new Interview();
        Wizard again = wizard(later);
        assertThat(again.page().map(Wizard.Page::sentence))
                .isEqualTo(wizard.page().map(Wizard.Page::sentence));
        assertThat(again.page().orElseThrow().number())
                .isEqualTo(wizard.page().orElseThrow().number());
        assertThat(again.back()).isEmpty();
        assertThat(again.page().orElseThrow().sentence()).startsWith("Flaps: where do they begin");
        answerUntil(again, "there is no such question");
        assertThat(again.page()).isEmpty();

        Session session = opened(new NewModelFile(words, new PackedAirfoils()).from(later));
        assertThat(session.document().fileName()).isEqualTo("quince.yaml");
        Path file = folder.resolve(session.document().fileName());
        assertThat(session.saveAs(file, false)).isInstanceOf(SafeFile.Saved.class);
        assertThat(Files.readString(file)).contains("name: Quince", "850 mm");

        List<ReportFile> sheets = new PrintedFiles(Compared.Task.of(words, session, Optional.empty(), true), words)
                .of("sheets", Size.Paper.A4, new MeasuredSections());
        Path paper = folder.resolve("paper");
        assertThat(BinaryFiles.write(
                        paper, sheets.stream().collect(Collectors.toMap(ReportFile::name, ReportFile::content))))
                .isEmpty();
        try (PDDocument bench = Loader.loadPDF(paper.resolve("bench.pdf").toFile())) {
            assertThat(bench.getNumberOfPages()).isPositive();
            assertThat(new PDFTextStripper().getText(bench)).contains("Quince", "flaps", "ailerons");
        }
    }

    private Session opened(String text) {
        Opening.Done done = (Opening.Done) new Opening(disk).text("Quince", text, new PackedAirfoils());
        Journal journal = new Journal(folder.resolve("state/unsaved"), 1, disk);
        return new Session(words, done.document(), disk, new Unsaved(journal, Runnable::run));
    }

    /** From the last page back to the first and to the last again: the same pages, the same file. */
    @Test
    void back_to_the_first_page_and_again_to_the_last_changes_nothing() {
        Interview straight = new Interview();
        List<String> asked = new ArrayList<>();
        Wizard wizard = Wizard.ofModel(words, straight, answers -> {});
        while (wizard.page().isPresent()) {
            Wizard.Page page = wizard.page().orElseThrow();
            asked.add(page.sentence());
            assertThat(wizard.answer(answer(page))).as(page.sentence()).isEmpty();
        }
        assertThat(asked).hasSizeGreaterThan(ANSWERS.size());

        Interview interview = new Interview();
        Wizard about = Wizard.ofModel(words, interview, answers -> {});
        answerUntil(about, asked.get(asked.size() - 1));
        for (int i = asked.size() - 2; i >= 0; i--) {
            assertThat(about.back()).isEmpty();
            assertThat(about.page().orElseThrow().sentence()).isEqualTo(asked.get(i));
        }
        assertThat(about.back()).hasValue(words.say("input.new.first"));
        List<String> again = new ArrayList<>();
        while (about.page().isPresent()) {
            Wizard.Page page = about.page().orElseThrow();
            again.add(page.sentence());
            String proposed = page.choices().stream()
                    .filter(Wizard.Choice::chosen)
                    .map(Wizard.Choice::answer)
                    .findFirst()
                    .orElse(page.proposal());
            assertThat(about.answer(proposed)).as(page.sentence()).isEmpty();
        }
        assertThat(again).isEqualTo(asked);
        NewModelFile file = new NewModelFile(words, new PackedAirfoils());
        assertThat(file.from(interview)).isEqualTo(file.from(straight));
    }
}
