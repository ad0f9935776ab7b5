package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import throwline.words.Words;

/** However a file is damaged, it is either read or answered in sentences: nothing else leaves the reader. */
class DamagedFilesTest {

    private static final int FILES = 5000;
    private static final long SEED = 20261125;
    private static final int LONGEST_SENTENCE = 700;

    private static final List<String> POISON = List.of(
            "\0",
            "\t",
            "\n",
            "{",
            "}",
            "[",
            "]",
            ": ",
            "- ",
            "#",
            " #",
            "\"",
            "'",
            "&a ",
            "*a",
            "!!int ",
            "---\n",
            "...",
            "|",
            ">",
            "%",
            "@",
            "`",
            "<<: ",
            "? ",
            "NaN",
            "1e999 m",
            "-",
            "99999999999999999999 mm",
            "\u00e9",
            "\ufeff",
            "\ud83d\ude00",
            "\u2028",
            "null",
            "~",
            "0 mm",
            "-1 mm",
            "up",
            "down",
            "elevator",
            "{}",
            "[]",
            "\r",
            "\\x");

    private final Words words = Words.load();
    private final FolderNames library = new FolderNames();

    @Test
    void eachIsReadOrAnsweredInSentences() throws IOException {
        Random random = new Random(SEED);
        List<byte[]> examples = List.of(
                Files.readAllBytes(Path.of("examples/orchard.yaml")),
                Files.readAllBytes(Path.of("examples/ridgeline.yaml")),
                Files.readAllBytes(Path.of("examples/saltmarsh.yaml")));
        int faulty = 0;
        for (int i = 0; i < FILES; i++) {
            byte[] damaged = examples.get(i % examples.size());
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                damaged = damage(damaged, random);
            }
            faulty += isAnswered(damaged, i) ? 1 : 0;
        }
        assertThat(faulty).as("damaged files that were refused").isBetween(FILES / 2, FILES);
    }

    private boolean isAnswered(byte[] file, int number) throws IOException {
        ReadModel read;
        try {
            read = ModelFile.read(new ByteArrayInputStream(file), "damaged.yaml", library, List.of());
        } catch (RuntimeException | Error e) {
            throw new AssertionError(
                    "file " + number + " brought the reader down:\n" + new String(file, StandardCharsets.UTF_8), e);
        }
        if (!(read instanceof ReadModel.Faulty faulty)) {
            return false;
        }
        assertThat(faulty.problems()).as("file %d", number).isNotEmpty().hasSizeLessThanOrEqualTo(Problems.MOST + 1);
        for (Problem problem : faulty.problems()) {
            assertThat(problem.say(words))
                    .as("file %d", number)
                    .startsWith("damaged.yaml:")
                    .doesNotContainPattern("\\{[0-9]\\}")
                    .hasSizeLessThan(LONGEST_SENTENCE);
        }
        return true;
    }

    private static byte[] damage(byte[] file, Random random) {
        int at = random.nextInt(file.length + 1);
        int length = Math.min(file.length - at, 1 + random.nextInt(12));
        return switch (random.nextInt(7)) {
            case 0 -> join(file, 0, at, new byte[] {(byte) random.nextInt(256)}, Math.min(file.length, at + 1));
            case 1 -> join(file, 0, at, new byte[0], at + length);
            case 2 ->
                join(file, 0, at, POISON.get(random.nextInt(POISON.size())).getBytes(StandardCharsets.UTF_8), at);
            case 3 -> Arrays.copyOf(file, Math.max(1, at));
            case 4 -> join(file, 0, at, Arrays.copyOfRange(file, at, at + length), at);
            case 5 -> swapLines(file, random);
            default -> {
                int from = random.nextInt(file.length);
                int to = Math.min(file.length, from + 1 + random.nextInt(200));
                yield join(file, 0, at, Arrays.copyOfRange(file, from, to), at);
            }
        };
    }

    private static byte[] join(byte[] file, int from, int to, byte[] middle, int rest) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(file, from, to - from);
        out.write(middle, 0, middle.length);
        out.write(file, rest, file.length - rest);
        return out.size() == 0 ? new byte[] {' '} : out.toByteArray();
    }

    private static byte[] swapLines(byte[] file, Random random) {
        String[] lines = new String(file, StandardCharsets.ISO_8859_1).split("\n", -1);
        int a = random.nextInt(lines.length);
        int b = random.nextInt(lines.length);
        String kept = lines[a];
        lines[a] = lines[b];
        lines[b] = kept;
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }
}
