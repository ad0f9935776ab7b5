package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.model.Model;
import throwline.report.CheckAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.study.OutlineAir;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.Quantity;
import throwline.words.Message;

/** Wording and layout of the answer of {@code check}, from a fixed model. */
class CheckDocumentTest {

    private static final Model MODEL = Fixture.orchard().comparison().model();

    @Test
    void with_something_unusual() {
        CheckAnswer answer = new CheckAnswer(
                MODEL,
                List.of(
                        new CheckAnswer.Assumed("wing.incidence", "0 deg", "Most builders measure from the wing."),
                        new CheckAnswer.Assumed("propeller.blades", "2", "Usual.")),
                List.of(Message.of("note.unusual.balance", share(0.41), share(0.25), share(0.33), "small")),
                List.of(Message.of("note.airfoil.likeness", "NX-8", "NACA 2412")),
                List.of(new OutlineAir(
                        "heron.dat",
                        0.145,
                        0.018,
                        180_000,
                        Math.toRadians(-1.7),
                        1.21,
                        Math.toRadians(13.4),
                        List.of())));
        Golden.check("check.txt", table(answer));
    }

    @Test
    void with_nothing_to_say() {
        String text = table(new CheckAnswer(MODEL, List.of(), List.of(), List.of(), List.of()));
        assertThat(text)
                .contains("Nothing is unusual for a model of this kind.\n")
                .endsWith("Nothing is assumed: the file gives every value.\n");
    }

    @Test
    void no_line_is_longer_than_the_page() {
        CheckAnswer answer = new CheckAnswer(
                MODEL,
                List.of(new CheckAnswer.Assumed("wing.height", "62 mm", "From position and body height.")),
                List.of(Message.of("note.unusual.surface-width", "flaps", new Quantity(0.05, Dimension.LENGTH))),
                List.of(),
                List.of());
        assertThat(table(answer).lines()).allMatch(line -> line.length() <= 80);
    }

    private static Quantity share(double value) {
        return new Quantity(value, Dimension.FRACTION);
    }

    private static String table(CheckAnswer answer) {
        return Answers.text(Answers.check(answer), Page.of(80, true, false, Display.metric()));
    }
}
