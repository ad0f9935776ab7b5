package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import throwline.words.Words;

/** Each line of a written file that is a comment for now: taken out of it, the file can be read, or the lines above are named. */
class UncommentedLinesTest {

    private static final Pattern OFF = Pattern.compile("( *)#(?! )(\\S.*)");
    private static final Words WORDS = Words.load();
    private static final NewModelFile FILE = new NewModelFile(WORDS, new FolderNames());

    private static Stream<String> written() {
        Map<String, String> few = new HashMap<>(NewModelFileTest.METRIC);
        Stream.of("wheels", "weight2", "balance2", "cells2", "rigging", "wing.incidence", "tail.incidence", "kv", "tip")
                .forEach(few::remove);
        return Stream.of(NewModelFileTest.METRIC, few)
                .map(NewModelFileTest::interview)
                .flatMap(answered -> Stream.of(FILE.full(answered), FILE.from(answered)));
    }

    @ParameterizedTest
    @MethodSource("written")
    void oneLineWorksOrNamesTheLinesAbove(String text) {
        List<String> lines = text.lines().toList();
        assertThat(TestFile.read(text, "new.yaml")).isInstanceOf(ReadModel.Project.class);
        List<Integer> off = IntStream.range(0, lines.size())
                .filter(i -> OFF.matcher(lines.get(i)).matches())
                .boxed()
                .toList();
        for (int i : off) {
            List<String> changed = new ArrayList<>(lines);
            on(changed, i);
            ReadModel read = read(changed);
            if (read instanceof ReadModel.Faulty faulty) {
                assertThat(faulty.problems()).as(lines.get(i)).hasSize(1);
                List<Integer> above = above(faulty.problems().get(0));
                assertThat(above).as(lines.get(i)).isNotEmpty().allMatch(line -> line <= i);
                above.forEach(line -> on(changed, line - 1));
                said(lines.get(i), read(changed));
            }
        }
    }

    private static void said(String line, ReadModel read) {
        String problems =
                read instanceof ReadModel.Faulty faulty ? faulty.problems().toString() : "";
        // A pivot belongs to a tail that moves as a whole, a cruise speed to its trim: so the sentences say.
        assertThat(problems)
                .as(line)
                .matches("|.*tail.elevator.(pivot, note=Message.code=input.tail.pivot"
                        + "|cruise speed, note=Message.code=input.cruise-trim.speed).*");
    }

    /** The position of a wing is not taken for the next thing of the group before it. */
    @Test
    void aLineIsNotReadAsPartOfTheGroupBefore() {
        String text = TestFile.text("base.yaml");
        // A comment that is no group of the format is none of the reader's business.
        assertThat(TestFile.read(text.replace("\nwing:\n", "\nwing:\n#todo:\n"), "new.yaml"))
                .isInstanceOf(ReadModel.Project.class);
        ReadModel lost = TestFile.read(text.replace("\nwing:", "\n#wing:"), "new.yaml");
        assertThat(((ReadModel.Faulty) lost).problems().get(0).say(WORDS))
                .contains("still a comment. Take the # away from \"wing:\" on line 6 too.");
    }

    private static List<Integer> above(Problem problem) {
        return Pattern.compile("on line (\\d+)")
                .matcher(problem.say(WORDS))
                .results()
                .map(MatchResult::group)
                .map(said -> Integer.valueOf(said.replace("on line ", "")))
                .toList();
    }

    private static void on(List<String> lines, int i) {
        Matcher off = OFF.matcher(lines.get(i));
        assertThat(off.matches()).isTrue();
        lines.set(i, off.group(1) + off.group(2));
    }

    private static ReadModel read(List<String> lines) {
        return TestFile.read(String.join("\n", lines) + "\n", "new.yaml");
    }
}
