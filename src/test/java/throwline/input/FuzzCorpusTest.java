package throwline.input;

import java.io.File;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Reads every file that {@link ModelFileFuzz} starts from or has ever failed on. */
class FuzzCorpusTest {

    private static final File CORPUS =
            new File("src/test/resources/throwline/input/ModelFileFuzzInputs/everyFileIsAnswered");

    @TestFactory
    Stream<DynamicTest> everyFileIsAnswered() {
        return Arrays.stream(Objects.requireNonNull(CORPUS.listFiles()))
                .sorted()
                .map(file -> DynamicTest.dynamicTest(
                        file.getName(), () -> ModelFileFuzz.check(Files.readAllBytes(file.toPath()))));
    }
}
