package throwline.report.data;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import throwline.Parsed;

class JsonWriterTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "-6, -6",
        "9.876543210, 9.87654",
        "1234567.8, 1234570",
        "0.000123456789, 0.000123457",
        "0.00000012345678, 1.23457E-7",
        "123456789012, 1.23457E+11",
        "NaN, null",
        "Infinity, null"
    })
    void numbers_have_six_figures_and_are_never_NaN(double value, String written) {
        assertThat(JsonWriter.number(value)).isEqualTo(written);
    }

    @Test
    void text_is_escaped_to_ascii() {
        String hard = "\"quoted\" back\\slash \t tab \n line \u00e9\u00df\u4e2d";
        JsonWriter json = new JsonWriter();
        json.object().key("a").value(hard).end();
        assertThat(json.toString()).matches("\\p{ASCII}*");
        assertThat(Parsed.of(json.toString()).at("a").text()).isEqualTo(hard);
    }

    @Test
    void empty_and_nested_things_are_well_formed() {
        JsonWriter json = new JsonWriter();
        json.object().key("none").array().end().key("some").array();
        json.value(1)
                .value(true)
                .nothing()
                .shortObject()
                .key("x")
                .value(0.5)
                .end()
                .end()
                .end();
        assertThat(json.toString())
                .isEqualTo(
                        "{\n  \"none\": [],\n  \"some\": [\n    1,\n    true,\n    null,\n    {\"x\": 0.5}\n  ]\n}\n");
        assertThat(Parsed.of(json.toString()).keys()).containsExactly("none", "some");
    }
}
