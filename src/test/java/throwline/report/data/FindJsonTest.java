package throwline.report.data;

import org.junit.jupiter.api.Test;
import throwline.Golden;
import throwline.report.FindFixture;
import throwline.report.Sentences;
import throwline.study.FindResult;
import throwline.units.Display;
import throwline.words.Words;

/** Keys and layout of {@code find/1}, from fixed results. */
class FindJsonTest {

    @Test
    void all_found() {
        Golden.check("find-all.json", json(FindFixture.allFound()));
    }

    @Test
    void nothing_found() {
        Golden.check("find-nothing.json", json(FindFixture.nothingFound()));
    }

    private static String json(FindResult result) {
        return new FindJson(new Sentences(Words.load(), Display.metric())).write(result);
    }
}
