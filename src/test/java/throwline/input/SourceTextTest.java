package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import throwline.words.Words;

/** What is no text, no file or no UTF-8 is said in one sentence. */
class SourceTextTest {

    private final String base = TestFile.text("base.yaml");

    @Test
    void emptyFile() {
        assertThat(sentence(new byte[0]))
                .isEqualTo("bird.yaml:1:1: This file is empty. A model file begins with \"throwline: 1\";"
                        + " \"throwline new\" writes one.");
        assertThat(sentence(bytes("\n  \n"))).startsWith("bird.yaml:1:1: This file is empty.");
        assertThat(sentence(bytes("# only a comment\n"))).startsWith("bird.yaml:1:1: This file is empty.");
    }

    @Test
    void missingFile(@TempDir Path folder) {
        assertThat(sentence(folder.resolve("bird.yaml")))
                .isEqualTo(folder.resolve("bird.yaml") + ": There is no such file. Check the name and the folder.");
    }

    @Test
    void folderForFile(@TempDir Path folder) {
        assertThat(sentence(folder))
                .isEqualTo(folder + ": This is a folder. Name the model file in it, for example orchard.yaml.");
    }

    @Test
    void unreadableFile(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("bird.yaml"), base);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("-w-------"));
        assumeFalse(Files.isReadable(file), "the superuser may read anything");
        assertThat(sentence(file))
                .isEqualTo(file + ": You may not read this file. Ask its owner, or change its permissions.");
    }

    @Test
    void binaryFile() {
        assertThat(sentence(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0}))
                .isEqualTo("bird.yaml:1:1: This is not a text file. What is read here is plain text, saved as UTF-8.");
        assertThat(sentence(bytes("throwline: 1\nname: bird\0\n")))
                .isEqualTo(
                        "bird.yaml:2:11: There is a control character here, a character that reverses the text, or half a"
                                + " character. A model file is plain text without them.");
    }

    /** What no page, picture or terminal may get, as itself or as an escape between quotes. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"a\\ud800b\"",
                "\"a\\udc00b\"",
                "\"a\\uffffb\"",
                "\"a\\ufffeb\"",
                "\"a\\U0001ffffb\"",
                "\"a\\u202eb\"",
                "\"a\\u2066b\"",
                "\"a\\eb\"",
                "\"a\\0b\"",
                "a\u202eb",
                "a\u2069b",
                "a\uffffb",
                "a\u009bb"
            })
    void charactersThatNothingShows(String name) {
        assertThat(sentence(bytes(base.replaceFirst("name: .*", Matcher.quoteReplacement("name: " + name)))))
                .startsWith("bird.yaml:2:")
                .contains("There is a control character here");
        assertThat(sentence(bytes(base.replaceFirst(
                        "name: .*", Matcher.quoteReplacement("\"" + name.replace("\"", "") + "\": x")))))
                .contains("There is a control character here");
    }

    @Test
    void namesOfAnyScriptAreRead() {
        assertThat(read(bytes(base.replaceFirst("name: .*", "name: \u05d0\u05d1 \ud83d\ude00 \u00e4"))))
                .isInstanceOf(ReadModel.Project.class);
    }

    @Test
    void linksThatLeadNowhere(@TempDir Path folder) throws IOException {
        Path circle = Files.createSymbolicLink(folder.resolve("circle"), Path.of("circle"));
        assertThat(sentence(circle)).contains("a link that leads nowhere");
        assertThat(sentence(circle.resolve("bird.yaml"))).contains("a link that leads nowhere");
        assertThat(sentence(Files.createSymbolicLink(folder.resolve("gone"), folder.resolve("none"))))
                .contains("a link that leads nowhere");
    }

    /** A pipe that nobody writes to is not waited for. */
    @Test
    @Timeout(20)
    void pipesAndDevicesAreNotOpened(@TempDir Path folder) throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0, "there are no pipes here");
        assertThat(sentence(pipe)).contains("This is not an ordinary file.").contains("name -");
        assertThat(sentence(Path.of("/dev/zero"))).contains("This is not an ordinary file.");
    }

    @Test
    void valuesLongerThanAny() {
        assertThat(sentence(bytes(base.replaceFirst("name: .*", "name: " + "a".repeat(501)))))
                .isEqualTo("bird.yaml:2:7: This value is longer than 500 characters; no value of a model is."
                        + " Look for a quote that is not closed.");
    }

    @Test
    void endlessFileIsNotReadToItsEnd() throws IOException {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 'a';
            }

            @Override
            public int read(byte[] into, int from, int length) {
                Arrays.fill(into, from, from + length, (byte) 'a');
                return length;
            }
        };
        assertThat(sentence(ModelFile.read(endless, "bird.yaml", new FolderNames(), List.of())))
                .isEqualTo("bird.yaml: This file is larger than 512 kB, so it is not a model file;"
                        + " those have about 3 kB of text.");
    }

    @Test
    void otherEncodings() {
        String degrees = base.replace("2 deg", "2\u00b0");
        assertThat(sentence(degrees.getBytes(StandardCharsets.ISO_8859_1)))
                .isEqualTo("bird.yaml:10:45: This character is not UTF-8. Save the file as UTF-8,"
                        + " or write \"deg\" for the degree sign.");
        assertThat(sentence(degrees.getBytes(Charset.forName("windows-1252"))))
                .startsWith("bird.yaml:10:45: This character is not UTF-8.");
        assertThat(sentence(base.getBytes(StandardCharsets.UTF_16)))
                .isEqualTo("bird.yaml:1:1: This file is written in UTF-16. Save it as UTF-8 and try again.");
        byte[] half = bytes(base.replace("2 deg", "2\u00b0"));
        assertThat(sentence(Arrays.copyOf(half, degrees.indexOf('\u00b0') + 1)))
                .startsWith("bird.yaml:10:45: This character is not UTF-8.");
    }

    @Test
    void byteOrderMarkOfUtf8IsSkipped() {
        assertThat(read(bytes("\ufeff" + base))).isInstanceOf(ReadModel.Project.class);
    }

    @Test
    void lineEndsOfOtherSystemsAreRead() {
        assertThat(read(bytes(base.replace("\n", "\r\n")))).isInstanceOf(ReadModel.Project.class);
        assertThat(read(bytes(base.replace("\n", "\r")))).isInstanceOf(ReadModel.Project.class);
        assertThat(sentence(bytes(base.replace("chord: 300 mm", "chord: 300").replace("\n", "\r\n"))))
                .startsWith("bird.yaml:9:25: wing.sections[1].chord:");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static ReadModel read(byte[] bytes) {
        return TestFile.read(bytes, "bird.yaml");
    }

    private static String sentence(byte[] bytes) {
        return sentence(read(bytes));
    }

    private static String sentence(Path file) {
        return sentence(ModelFile.read(file, new FolderNames()));
    }

    private static String sentence(ReadModel read) {
        assertThat(read).isInstanceOf(ReadModel.Faulty.class);
        ReadModel.Faulty faulty = (ReadModel.Faulty) read;
        assertThat(faulty.problems()).hasSize(1);
        return faulty.problems().get(0).say(Words.load());
    }
}
