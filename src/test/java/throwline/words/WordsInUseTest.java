package throwline.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every sentence has a user in the code, and every key in the code has its sentence. */
class WordsInUseTest {

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern CELL = Pattern.compile("[^,\n]+");
    private static final Pattern CONSTANT = Pattern.compile("\\b([A-Z][A-Z0-9_]*)\\b");
    private static final Pattern FROM_HELP = Pattern.compile("\\$\\{bundle:([\\w.-]+)\\}");
    private static final Pattern SAID =
            Pattern.compile("(?:\\bsay|\\bMessage\\.of)\\(\\s*\"([\\w-]+\\.[\\w.-]+)\"\\s*[,)]");

    private final Set<String> keys = Words.load().keys();
    private final String code = code();
    private final Set<String> literals = Stream.of(
                    found(LITERAL),
                    CELL.matcher(tables()).results().map(MatchResult::group).collect(Collectors.toSet()))
            .flatMap(Set::stream)
            .collect(Collectors.toSet());
    private final Set<String> fromHelp = found(FROM_HELP);
    private final Set<String> constants = found(CONSTANT).stream()
            .map(name -> name.toLowerCase(Locale.ROOT))
            .flatMap(name -> Stream.of(name, name.replace('_', '-')))
            .collect(Collectors.toSet());

    @Test
    void every_sentence_is_said_somewhere() {
        assertThat(keys.stream().filter(Predicate.not(this::isUsed)).sorted()).isEmpty();
        assertThat(isUsed("sheet.caution.nobody-says-this")).isFalse();
        assertThat(isUsed("nobody.motor")).isFalse();
    }

    @Test
    void every_key_has_its_sentence() {
        assertThat(found(SAID)).hasSizeGreaterThan(100).allMatch(keys::contains);
        assertThat(fromHelp.stream().filter(key -> !key.endsWith("."))).allMatch(keys::contains);
    }

    /** A key as it stands in the code, or put together from its pieces, the first one naming its family. */
    private boolean isUsed(String key) {
        return literals.contains(key)
                || fromHelp.contains(key)
                || literals.stream()
                        .filter(start -> key.startsWith(start) && isStart(start, key.substring(start.length())))
                        .anyMatch(start -> isPutTogether(key.substring(start.length())));
    }

    private static boolean isStart(String start, String rest) {
        return start.matches("[\\w-]+(\\.[\\w-]+)*[.-]")
                || (start.matches("[\\w-]+(\\.[\\w-]+)+") && rest.startsWith("."));
    }

    private boolean isPutTogether(String rest) {
        return rest.isEmpty()
                || Stream.concat(literals.stream(), constants.stream())
                        .filter(piece -> (piece.length() > 1 || piece.matches("[.-]")) && rest.startsWith(piece))
                        .anyMatch(piece -> isPutTogether(rest.substring(piece.length())));
    }

    private Set<String> found(Pattern pattern) {
        return pattern.matcher(code)
                .results()
                .map(match -> match.group(1).replaceFirst("^--", "").replaceFirst("^(\\w+) (\\w+)$", "$1.$2"))
                .collect(Collectors.toSet());
    }

    /** Pieces of keys stand in tables of the product too. */
    private static String tables() {
        return text(Path.of("src/main/resources/throwline/out-of-scope.csv"));
    }

    private static String code() {
        return Stream.of("src/main/java", "src/main/jte")
                .flatMap(WordsInUseTest::files)
                .collect(Collectors.joining("\n"));
    }

    private static Stream<String> files(String folder) {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            return files.filter(Files::isRegularFile).map(WordsInUseTest::text).collect(Collectors.toList()).stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
