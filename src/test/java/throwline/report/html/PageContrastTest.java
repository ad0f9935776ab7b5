package throwline.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The page can be read outdoors: every colour of text stands out from every colour behind it by 7 to 1, the enhanced contrast of
 * W3C, Web Content Accessibility Guidelines 2.1, success criterion 1.4.6.
 */
class PageContrastTest {

    private static final Pattern COLOUR = Pattern.compile("--(\\w+): #(\\p{XDigit}{6});");
    private static final double ENHANCED = 7;

    /** The formula against the ends of its scale, and a grey of the guideline's own techniques: 4.48 for #777777 on white. */
    @Test
    void the_formula_is_that_of_the_guideline() {
        assertThat(contrast("000000", "ffffff")).isCloseTo(21, within(1e-9));
        assertThat(contrast("777777", "ffffff")).isCloseTo(4.48, within(0.005));
    }

    @Test
    void every_text_stands_out_from_what_is_behind_it() throws IOException {
        Map<String, String> colours = new HashMap<>();
        Matcher found = COLOUR.matcher(Files.readString(Path.of("src/main/jte/style.jte")));
        while (found.find()) {
            colours.put(found.group(1), found.group(2));
        }
        for (String text : List.of("ink", "quiet", "link")) {
            for (String behind : List.of("ground", "shade")) {
                assertThat(contrast(colours.getOrDefault(text, ""), colours.getOrDefault(behind, "")))
                        .as("%s on %s", text, behind)
                        .isGreaterThanOrEqualTo(ENHANCED);
            }
        }
        assertThat(contrast("ffffff", colours.getOrDefault("link", ""))).isGreaterThanOrEqualTo(ENHANCED);
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance as the guideline defines it. */
    private static double luminance(String colour) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double share = Integer.parseInt(colour.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
