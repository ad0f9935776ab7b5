package throwline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import throwline.words.Words;

/** Every key that the code names has its sentence. */
class WordsInCodeTest {

    /** A key, or the beginning of keys that the code completes at run time: {@code row.air.propeller.} */
    private static final Pattern KEY =
            Pattern.compile("[\":](?<key>(note|why|row|chart|cli|input)\\.[a-z0-9]+([.-][a-z0-9]+)*\\.?)[\"}]");

    private final Words words = Words.load();

    @Test
    void every_key_in_the_code_has_its_sentence() throws IOException {
        assertThat(keysInCode()).hasSizeGreaterThan(100).allMatch(key -> words.has(key) || begins(key));
    }

    private boolean begins(String key) {
        String beginning = key.endsWith(".") ? key : key + ".";
        return words.keys().stream().anyMatch(k -> k.startsWith(beginning));
    }

    private static Set<String> keysInCode() throws IOException {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                KEY.matcher(Files.readString(file)).results().forEach(m -> keys.add(m.group(1)));
            }
        }
        return keys;
    }
}
