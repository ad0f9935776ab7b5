package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import throwline.model.Named;
import throwline.report.Sentences;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.Key;
import throwline.units.Measure;
import throwline.units.Quantity;
import throwline.words.Words;

/** What a document becomes of records, by hand-written documents. Every number is invented. */
class RecordWriterTest {

    /** Its place is worked out. */
    record Arm(
            @Key(Key.NONE) double length,
            @Measure(Dimension.ANGLE) double angle,
            @Key(value = "side", nullIfEmpty = true) String where) {

        @Key(value = "across", after = "height")
        public double across() {
            return length * Math.cos(angle);
        }

        @Key(value = "height", after = "angle")
        public double height() {
            return length * Math.sin(angle);
        }

        @Key(value = "turn", after = "where")
        @Measure(Dimension.ANGLE)
        public Optional<Double> turn() {
            return Optional.of(2 * angle);
        }
    }

    /** A thing that is told by its name. */
    record Horn(String name, double chord) implements Named {}

    /** A record with others in it. */
    record Linkage(
            Horn horn, @Key(Key.INLINE) Arm arm, Quantity swing, Optional<String> remark, List<List<String>> alike) {}

    /** One key more than stands on a line. */
    record Wide(
            int a, int b, int c, int d, int e, int f, int g, int h, int i, int j, int k, int l, int m, int n, int o) {}

    private static String written(String key, Object value) {
        RecordWriter json = new RecordWriter(new Sentences(Words.load(), Display.metric()));
        json.object(() -> json.write(key, value));
        return json.toString();
    }

    @Test
    void what_is_worked_out_stands_behind_what_it_follows() {
        assertThat(written("arm", new Arm(2, Math.PI / 6, "")))
                .isEqualTo(
                        "{\n  \"arm\": {\"angle\": 30, \"height\": 1, \"across\": 1.73205, \"side\": null, \"turn\": 60}\n}\n");
        assertThat(written("arm", new Arm(2, 0, "left"))).contains("\"across\": 2, \"side\": \"left\"");
    }

    @Test
    void names_quantities_and_what_stands_in_place_of_a_component() {
        Linkage linkage = new Linkage(
                new Horn("long", 0.02),
                new Arm(1, Math.PI / 2, "right"),
                new Quantity(Math.PI / 3, Dimension.ANGLE),
                Optional.empty(),
                List.of(List.of("a", "b")));
        assertThat(written("linkage", linkage).replaceAll("\\s+", " "))
                .isEqualTo("{ \"linkage\": { \"horn\": \"long\", \"angle\": 90, \"height\": 1, \"across\": 6.12323E-17,"
                        + " \"side\": \"right\", \"turn\": 180, \"swing\": 60, \"remark\": null,"
                        + " \"alike\": [ [ \"a\", \"b\" ] ] } } ");
    }

    @Test
    void short_records_stand_on_a_line_and_long_ones_do_not() {
        assertThat(written("list", List.of(new Horn("a", 1), new Horn("b", 2))))
                .isEqualTo("{\n  \"list\": [\n    \"a\",\n    \"b\"\n  ]\n}\n");
        assertThat(written("long", new Wide(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15)))
                .startsWith("{\n  \"long\": {\n    \"a\": 1,\n    \"b\": 2,")
                .endsWith("\"o\": 15\n  }\n}\n");
    }
}
