package throwline.input;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import throwline.words.Words;

/**
 * Whatever bytes a file holds, the reader answers with a model or with sentences. Makes up files, guided by the branches
 * that they take; runs with the profile {@code fuzz} only. It starts from the files in {@code ModelFileFuzzInputs} and
 * leaves there what brought the reader down; {@link FuzzCorpusTest} reads all of them in normal runs.
 */
class ModelFileFuzz {

    private static final Words WORDS = Words.load();

    @FuzzTest(maxDuration = "10m")
    void everyFileIsAnswered(byte[] file) {
        check(file);
    }

    static void check(byte[] file) {
        if (TestFile.read(file, "fuzz.yaml") instanceof ReadModel.Faulty faulty) {
            assertThat(faulty.problems()).isNotEmpty();
            faulty.problems().forEach(p -> assertThat(p.say(WORDS)).startsWith("fuzz.yaml"));
        }
    }
}
