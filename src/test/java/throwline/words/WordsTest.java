package throwline.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WordsTest {

    @Test
    void whatAPersonWroteIsNotTakenForAGap() {
        assertThat(Words.load().say("input.unknown", "{1} $1 \\", "name"))
                .isEqualTo("\"{1} $1 \\\" is not known here. Known are: name.");
    }
}
