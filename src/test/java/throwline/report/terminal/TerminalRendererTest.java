package throwline.report.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.Golden;
import throwline.report.Page;
import throwline.report.document.Block;
import throwline.report.document.Comparison;
import throwline.report.document.Document;
import throwline.report.document.Role;
import throwline.report.document.Table;
import throwline.report.document.Text;
import throwline.report.document.Value;
import throwline.units.Display;
import throwline.units.Unit;
import throwline.words.Words;

/** Every kind of block on every width; words and numbers are invented. */
class TerminalRendererTest {

    private static final double DEG = Math.PI / 180;

    private static Comparison comparison() {
        List<Comparison.Cell> speeds = List.of(
                Comparison.Cell.of(Value.speed(9.53)),
                Comparison.Cell.of(Value.speed(8.4)),
                new Comparison.Cell(
                        Text.say("row.none"), Role.PLAIN, Text.say("why.no-stall"), Optional.empty(), List.of()));
        List<Text> beside =
                List.of(Value.of(9.53, Value.Kind.OTHER_SPEED), Value.of(8.4, Value.Kind.OTHER_SPEED), Text.none());
        Comparison.Row stalls = new Comparison.Row(
                "stallSpeed",
                Text.none(),
                Text.say("row.stalls"),
                Block.Depth.ESSENTIAL,
                List.of(speeds),
                List.of(Comparison.Below.of(Text.say("row.or"), List.of(beside))));
        List<Comparison.Cell> rates = List.of(
                Comparison.Cell.of(Value.of(85 * DEG, Value.Kind.RATE)),
                Comparison.Cell.of(Value.of(60 * DEG, Value.Kind.RATE)),
                Comparison.Cell.of(Text.name("-")));
        Comparison.Row rolls = new Comparison.Row(
                "rollRate",
                Text.say("row.roll"),
                Text.name("low rates"),
                Block.Depth.ESSENTIAL,
                List.of(rates),
                List.of());
        return new Comparison(
                Text.none(),
                List.of(new Comparison.Group(
                        Text.none(),
                        Text.name("Pack small"),
                        List.of(Text.name("The balance point lies too far back.")),
                        List.of("clean", "landing flap", "airbrake with a very long name"))),
                List.of(stalls, rolls));
    }

    private static Document document() {
        Table table = new Table(
                List.of(
                        Table.Column.left(Text.name("surface")),
                        Table.Column.right(Text.name("where it stands")),
                        Table.Column.left(Text.name("remark"))),
                List.of(
                        Table.Cells.of(
                                Text.name("flaps"),
                                Value.deflection(54.2 * DEG),
                                Text.name("held by its servo, hardly")),
                        new Table.Cells(
                                List.of(
                                        Table.Cell.of(Text.name("ailerons")),
                                        Table.Cell.of(Value.deflection(-18 * DEG), new Value.Edge(-18 * DEG, 0.067)),
                                        Table.Cell.of(Text.none())),
                                Role.PLAIN),
                        new Table.Remark(Text.name("Measured at the root end of each."))));
        return new Document(
                Text.name("Orchard"),
                List.of(Text.name("Throttle closed, no propeller, still air of the field in the model file.")),
                List.of(
                        comparison(),
                        Block.Section.of(
                                Text.name("Where the surfaces stand"),
                                List.of(
                                        table,
                                        Block.Paragraph.of(
                                                Text.name("A sentence that is long enough to be broken on any width")),
                                        Block.Paragraph.of(
                                                Role.DANGER, Text.name("Ends below its stall and drops in.")))),
                        Block.Section.of(
                                        Text.name("Only for the curious"),
                                        List.of(Block.Paragraph.of(Text.name("Folded until it is asked for."))))
                                .folded(),
                        Block.Section.of(Text.name("Drawn"), List.of()).on(Block.Medium.PAGE),
                        new Block.Checks(List.of(Text.name("Motor first."))),
                        Block.Paragraph.of(Text.name("First of two.")),
                        Block.Paragraph.of(Text.name("Second of two."))));
    }

    private static String text(int width, boolean unicode, boolean styled, boolean all, Display display) {
        return new TerminalRenderer(Page.of(width, unicode, styled, display), Words.load(), all).write(document());
    }

    @Test
    void every_kind_of_block() {
        Golden.check(
                "document-80.txt",
                text(80, true, false, true, Display.metric()) + "\n"
                        + text(
                                50,
                                false,
                                false,
                                false,
                                Display.metric().with(Unit.INCH).with(Unit.MILE_PER_HOUR)));
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 30, 40, 60, 80, 120})
    void no_line_is_longer_than_the_page(int width) {
        assertThat(text(width, true, false, true, Display.metric()).lines())
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
    }

    @Test
    void styles_change_nothing_but_the_look() {
        String styled = text(80, true, true, true, Display.metric());
        assertThat(styled).contains("\u001b[1m").contains("\u001b[1;31m");
        assertThat(styled.replaceAll("\u001b\\[[\\d;]+m", "")).isEqualTo(text(80, true, false, true, Display.metric()));
    }

    @Test
    void plain_letters_where_nothing_else_can_be_shown() {
        assertThat(text(80, false, false, true, Display.metric())).matches("\\p{ASCII}*");
    }

    /** A reader never has to look for the unit on the next line. */
    @Test
    void a_number_and_its_unit_stay_together() {
        for (int width = 20; width < 60; width++) {
            String[] lines = new TerminalRenderer(Page.of(width, true, false, Display.metric()), Words.load(), true)
                    .write(new Document(
                            Text.name("Speeds"),
                            List.of(),
                            List.of(Block.Paragraph.say(
                                    "find.setup.margin", Value.speed(12), Value.of(1.3, Value.Kind.SHARE)))))
                    .split("\n", -1);
            assertThat(lines).noneMatch(line -> line.endsWith(" 12.0"));
        }
    }
}
