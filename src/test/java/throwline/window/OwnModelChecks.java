package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JLabel;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The way of a person with an own model on a screen, by mouse and keys alone: from the first start over the questions
 * (wrong answers, back, given up and gone on) to a saved file and a bench sheet on paper. Needs a screen, as
 * {@link WindowChecks} does.
 */
class OwnModelChecks {

    private static final Path PICTURES = Path.of("target/window");

    @TempDir
    private Path folder = Path.of("");

    private static String text(String name) {
        return OpenWindow.on(() -> ((JLabel) OpenWindow.named(name).orElseThrow()).getText())
                .replace("<html>", "")
                .replace("</html>", "");
    }

    private static boolean isAsking() {
        return OpenWindow.on(() -> OpenWindow.named("question").isPresent());
    }

    /** Types what this person answers, and goes to the next page by the enter key. */
    private static void answer(OpenWindow window) {
        String question = text("question");
        OwnModelTest.ANSWERS.entrySet().stream()
                .filter(each -> question.startsWith(each.getKey()))
                .map(Map.Entry::getValue)
                .map(typed -> typed.toLowerCase(Locale.ROOT))
                .filter(typed -> OpenWindow.on(() -> OpenWindow.named("answer").isPresent()))
                .findFirst()
                .ifPresent(window::type);
        window.key(KeyEvent.VK_ENTER);
    }

    private static void answerUntil(OpenWindow window, String start) {
        while (isAsking() && !text("question").startsWith(start)) {
            String before = text("question");
            answer(window);
            assertThat(!isAsking() || !text("question").equals(before))
                    .as(before)
                    .isTrue();
        }
    }

    @Test
    void from_the_first_start_to_a_bench_sheet_on_paper() throws IOException {
        OpenWindow window = new OpenWindow(folder.resolve("state"), Optional.empty());
        window.press("window.file.new");
        OpenWindow.await("question");
        window.picture(PICTURES.resolve("new-1.png"));
        answerUntil(window, "Span, tip");
        window.type("a lot");
        window.key(KeyEvent.VK_ENTER);
        assertThat(text("new wrong")).contains("a lot");
        window.picture(PICTURES.resolve("new-2-wrong.png"));
        for (int i = 0; i < "a lot".length(); i++) {
            window.key(KeyEvent.VK_BACK_SPACE);
        }
        answerUntil(window, "Flaps: where do they begin");
        window.picture(PICTURES.resolve("new-flaps.png"));
        window.press("window.new.back");
        assertThat(text("question")).startsWith("Weight with another battery");
        window.key(KeyEvent.VK_ENTER);
        answerUntil(window, "Flaps: where do they end");

        // Given up in the middle; another time it goes on there.
        window.press("window.cancel");
        OpenWindow.until(() -> OpenWindow.named("question").isEmpty());
        window.key(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
        window.press("Go on");
        OpenWindow.await("question");
        assertThat(text("question")).startsWith("Flaps: where do they end");
        answerUntil(window, "there is no such question");
        OpenWindow.until(() -> window.session().model().name().equals("quince"));

        Path file = folder.resolve("quince.yaml");
        window.key(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
        OpenWindow.await("files");
        window.robot().delay(300);
        window.picture(PICTURES.resolve("new-save.png"));
        window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        window.type(file.toString());
        window.key(KeyEvent.VK_ENTER);
        OpenWindow.until(() -> Files.exists(file));
        assertThat(Files.readString(file)).contains("name: quince");

        Path paper = Files.createDirectory(folder.resolve("paper"));
        window.key(KeyEvent.VK_7, KeyEvent.VK_CONTROL);
        window.press("window.print.sheets");
        OpenWindow.await("folder");
        window.robot().delay(300);
        window.picture(PICTURES.resolve("new-folder.png"));
        window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        window.type(paper.toString());
        window.key(KeyEvent.VK_ENTER);
        OpenWindow.until(() -> Files.exists(paper.resolve("bench.pdf")));
        assertThat(text("print state")).contains("bench.pdf");
        window.picture(PICTURES.resolve("new-printed.png"));
        try (PDDocument bench = Loader.loadPDF(paper.resolve("bench.pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(bench)).contains("quince", "flaps", "ailerons");
        }
        window.close();
        assertThat(window.faults).isEmpty();
    }
}
