package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import throwline.words.Words;

/** Models of more set-ups and packs than any is flown with are refused before the work begins. */
class SizeCheckTest {

    @Test
    void limitsAreNamed() {
        assertThat(said(25, 1)).contains("There are 25 here; 24 is the most");
        assertThat(said(1, 9)).contains("There are 9 here; 8 is the most");
        assertThat(said(24, 3)).contains("72").contains("64 is the most");
        assertThat(said(8, 8, 6)).contains("384").contains("240 is the most");
    }

    @Test
    void theLargestIsRead() {
        assertThat(said(21, 3)).isEmpty();
        assertThat(said(8, 8)).isEmpty();
        assertThat(said(10, 2, 12)).isEmpty();
    }

    private static String said(int setUps, int packs) {
        return said(setUps, packs, 1);
    }

    private static String said(int setUps, int packs, int surfaces) {
        String text = TestFile.text("base.yaml").replaceAll("(?m)^(packs|set-ups|sticks):.*\\n( .*\\n|\\n)*", "");
        String strips = IntStream.range(0, surfaces)
                .mapToObj(i -> "    part%d: {from: %d mm, to: %d mm, travel: {up: 20 deg, down: 20 deg}}\n"
                        .formatted(i, 100 + 50 * i, 145 + 50 * i))
                .collect(Collectors.joining());
        String file = text.replaceFirst("(?m)^  surfaces:.*\\n(    .*\\n)*", "  surfaces:\n" + strips)
                + "packs:\n" + lines(packs, "  pack%d: {weight: 3 kg, balance: 84 mm}\n")
                + "set-ups:\n" + lines(setUps, "  way%d: {}\n");
        return TestFile.read(file, "bird.yaml") instanceof ReadModel.Faulty faulty
                ? faulty.problems().stream().map(p -> p.say(Words.load())).collect(Collectors.joining("\n"))
                : "";
    }

    private static String lines(int count, String line) {
        return IntStream.range(0, count)
                .mapToObj(i -> line.replace("%d", String.valueOf(i)))
                .collect(Collectors.joining());
    }
}
