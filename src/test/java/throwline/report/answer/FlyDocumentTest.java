package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.report.FlyFixture;
import throwline.report.Page;
import throwline.study.FlyResult;
import throwline.units.Display;
import throwline.units.Unit;

/** Wording and layout of one set-up in depth, from fixed results. */
class FlyDocumentTest {

    @Test
    void all_found() {
        Golden.check("fly-all-80.txt", table(FlyFixture.airbrake(), Page.of(80, true, false, Display.metric())));
    }

    @Test
    void the_reference_without_an_answer() {
        Golden.check("fly-reference-80.txt", table(FlyFixture.reference(), Page.of(80, true, false, Display.metric())));
    }

    @Test
    void slow_going_back_in_inches() {
        Golden.check(
                "fly-slow-ascii.txt",
                table(
                        FlyFixture.slow(),
                        Page.of(
                                80,
                                false,
                                false,
                                Display.metric().with(Unit.INCH).with(Unit.MILE_PER_HOUR))));
    }

    @Test
    void the_first_screen_of_one_set_up() {
        String text = Answers.screen(Answers.fly(FlyFixture.airbrake()), Page.of(80, true, false, Display.metric()));
        Golden.check("fly-first-80.txt", text);
        assertThat(text.lines()).hasSizeLessThanOrEqualTo(40);
    }

    @Test
    void no_line_is_longer_than_the_page() {
        for (int width : new int[] {72, 80, 100, 120}) {
            for (FlyResult result : List.of(FlyFixture.airbrake(), FlyFixture.reference(), FlyFixture.slow())) {
                String text = table(result, Page.of(width, true, false, Display.metric()));
                // Tables of servos take what they need.
                String looked = width < 100 ? text.substring(0, text.indexOf("Servo loads")) : text;
                assertThat(looked.lines()).allMatch(line -> line.length() <= width);
            }
        }
    }

    @Test
    void plain_ascii_where_the_place_shows_no_more() {
        assertThat(table(FlyFixture.airbrake(), Page.of(80, false, false, Display.metric())))
                .matches("\\p{ASCII}*");
    }

    private static String table(FlyResult result, Page page) {
        return Answers.text(Answers.fly(result), page);
    }
}
