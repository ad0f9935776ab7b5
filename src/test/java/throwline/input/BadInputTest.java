package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import throwline.words.Words;

/** Each bad input gets its own clear sentence; the sentences are pinned in {@code bad-inputs.txt}. */
class BadInputTest {

    private record Case(String name, String before, String after, List<String> sentences) {}

    @TestFactory
    Stream<DynamicTest> sentences() {
        String base = TestFile.text("base.yaml");
        Words words = Words.load();
        return cases(TestFile.text("bad-inputs.txt")).stream()
                .map(c -> DynamicTest.dynamicTest(c.name(), () -> {
                    assertThat(base).containsOnlyOnce(c.before());
                    ReadModel read = TestFile.read(base.replace(c.before(), c.after()), "base.yaml");
                    assertThat(read).isInstanceOf(ReadModel.Faulty.class);
                    assertThat(((ReadModel.Faulty) read).problems())
                            .extracting(p -> p.say(words))
                            .containsExactlyElementsOf(c.sentences());
                }));
    }

    private static List<Case> cases(String text) {
        List<Case> cases = new ArrayList<>();
        for (String block : text.split("(?m)^== ", -1)) {
            List<String> lines = block.lines().toList();
            if (lines.isEmpty() || lines.get(0).startsWith("#")) {
                continue;
            }
            cases.add(new Case(
                    lines.get(0),
                    String.join("\n", marked(lines, "- ")),
                    String.join("\n", marked(lines, "+ ")),
                    marked(lines, "> ")));
        }
        return cases;
    }

    private static List<String> marked(List<String> lines, String mark) {
        return lines.stream()
                .filter(line -> line.startsWith(mark))
                .map(line -> line.substring(mark.length()).replace("\\t", "\t").replace("\\n", "\n"))
                .toList();
    }
}
