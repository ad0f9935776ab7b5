package throwline.report.answer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.report.CompareAnswer;
import throwline.report.Fixture;
import throwline.report.Page;
import throwline.units.Display;
import throwline.units.Unit;

/** Wording and layout of the table, from fixed results. */
class CompareDocumentTest {

    @Test
    void four_set_ups_on_80_columns() {
        Golden.check("compare-80.txt", table(Fixture.orchard(), Page.of(80, true, false, Display.metric())));
    }

    @Test
    void the_first_screen_of_four_set_ups_with_two_packs() {
        String text =
                Answers.screen(Answers.compare("", Fixture.orchard()), Page.of(80, true, false, Display.metric()));
        Golden.check("compare-first-80.txt", text);
        assertThat(text.lines()).hasSizeLessThan(72);
    }

    @Test
    void six_set_ups_on_100_columns() {
        Golden.check("compare-six-100.txt", table(Fixture.crowded(), Page.of(100, true, false, Display.metric())));
    }

    @Test
    void plain_ascii_with_miles_an_hour() {
        Page page = Page.of(80, false, false, Display.metric().with(Unit.MILE_PER_HOUR));
        String text = table(Fixture.orchard(), page);
        Golden.check("compare-ascii-mph.txt", text);
        assertThat(text).matches("\\p{ASCII}*");
    }

    /** Every airspeed that is read follows the unit, with m/s below; what goes up or down stays in m/s. */
    @Test
    void no_speed_is_left_in_another_unit() {
        Page page = Page.of(80, true, false, Display.metric().with(Unit.MILE_PER_HOUR));
        assertThat(table(Fixture.orchard(), page).lines().filter(line -> line.contains("m/s")))
                .isNotEmpty()
                .allMatch(line -> line.matches("  or.*|(Sink rate|Gust to stall|Climb) .*"));
    }

    @Test
    void nothing_found_says_why() {
        Golden.check("compare-nothing.txt", table(Fixture.nothingFound(), Page.of(80, true, false, Display.metric())));
    }

    /** What must not be flown is told above its numbers. */
    @Test
    void an_unstable_model_is_warned_of_before_its_numbers() {
        String text = table(Fixture.unstable(), Page.of(80, true, false, Display.metric()))
                .replaceAll("\\s+", " ");
        assertThat(text.indexOf("Do not fly it like this: move the balance forward."))
                .isBetween(0, text.indexOf("Stall speed"));
        assertThat(text.split("Do not fly it like this", -1))
                .hasSize(1 + 2 * Fixture.unstable().comparison().packs().size());
    }

    @Test
    void no_line_is_longer_than_the_page() {
        for (int width : new int[] {60, 72, 80, 100, 120}) {
            for (CompareAnswer answer : new CompareAnswer[] {Fixture.orchard(), Fixture.crowded()}) {
                assertThat(table(answer, Page.of(width, true, false, Display.metric()))
                                .lines())
                        .allMatch(line -> line.length() <= width);
            }
        }
    }

    @Test
    void bold_and_dim_change_nothing_but_the_look() {
        String plain = table(Fixture.orchard(), Page.of(80, true, false, Display.metric()));
        String styled = table(Fixture.orchard(), Page.of(80, true, true, Display.metric()));
        assertThat(styled).contains("\u001b[1m");
        assertThat(styled.replaceAll("\u001b\\[[\\d;]+m", "")).isEqualTo(plain);
    }

    private static String table(CompareAnswer answer, Page page) {
        return Answers.text(Answers.compare("", answer), page);
    }
}
