package throwline;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The methods manual has every section that code, tests and tables cite, and cites only tests and cases that there are. */
class MethodsManualTest {

    private static final Path MANUAL = Path.of("src/main/docs/methods.md");

    private static final Pattern HEADING = Pattern.compile("(?m)^#{2,3} (\\d+(?:\\.\\d+)?)\\b");

    /** A row of a table that carries a section's number. */
    private static final Pattern ROW = Pattern.compile("(?m)^\\| (\\d+\\.\\d+) \\|");

    /** Also over the end of a line of a comment. */
    private static final Pattern CITATION = Pattern.compile(
            "[Mm]ethods(?:\\s|\\*|#|//)+manual((?:\\s|\\*|#|,|//)*(?:(?:to|and|,)\\s)?(\\d+(?:\\.\\d+)?))?");

    /** Further sections of the same citation. */
    private static final Pattern MORE = Pattern.compile("\\G(?:,|\\s(?:to|and))\\s(\\d+\\.\\d+)");

    /** Names of notes that no reader has: two words in capitals of which the second says what kind of note it is. */
    private static final Pattern NOTE =
            Pattern.compile("\\b[A-Z]+-(?:METHODS|CASES|FACTS|DATA|POWER)\\b|independent\\sscript");

    private static final Pattern TEXT =
            Pattern.compile(".*\\.(java|md|csv|txt|yaml|jte|js|mjs|properties|json|xml|dat|html|css|sh|received)");

    @Test
    void everyCitedSectionStandsThere() throws IOException {
        String manual = Files.readString(MANUAL);
        Set<String> sections = found(HEADING, manual);
        sections.addAll(found(ROW, manual));
        List<String> wrong = new ArrayList<>();
        for (Path file : files()) {
            String text = text(file);
            Matcher citation = CITATION.matcher(text);
            while (citation.find()) {
                List<String> cited = new ArrayList<>();
                cited.add(citation.group(2) == null ? "no number" : citation.group(2));
                Matcher more = MORE.matcher(text).region(citation.end(), text.length());
                while (more.find()) {
                    cited.add(more.group(1));
                }
                cited.stream()
                        .filter(number -> !sections.contains(number) && !isDocument(file))
                        .forEach(number -> wrong.add(file + ": " + number));
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Documents may speak of the manual as a whole. */
    private static boolean isDocument(Path file) {
        return file.toString().endsWith(".md") || file.endsWith("MethodsManualTest.java");
    }

    @Test
    void notesThatNobodyHasAreNotCited() {
        List<String> wrong = new ArrayList<>();
        for (Path file : files()) {
            String text = text(file);
            NOTE.matcher(text).results().forEach(note -> wrong.add(file + ": " + note.group()));
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void testsAndCasesThatTheManualNamesExist() throws IOException {
        String manual = Files.readString(MANUAL);
        Set<String> names = files().stream()
                .map(file -> file.getFileName().toString().replaceFirst("\\.(java|csv)$", ""))
                .collect(toCollection(TreeSet::new));
        Set<String> named = found(Pattern.compile("`([A-Z][A-Za-z]+Test)`"), manual);
        named.addAll(found(Pattern.compile("cases?\\s+`([a-z0-9-]+)`"), manual));
        assertThat(named).hasSizeGreaterThan(30);
        assertThat(names).containsAll(named);
    }

    @Test
    void sectionsAreNumberedInOrder() throws IOException {
        List<String> numbers = HEADING.matcher(Files.readString(MANUAL))
                .results()
                .map(result -> result.group(1))
                .toList();
        String chapter = "0";
        int section = 0;
        for (String number : numbers) {
            if (number.contains(".")) {
                section++;
                assertThat(number).startsWith(chapter + ".");
                int stated = Integer.parseInt(number.substring(number.indexOf('.') + 1));
                assertThat(stated).as(number).isGreaterThanOrEqualTo(section);
                section = stated;
            } else {
                assertThat(Integer.parseInt(number)).isEqualTo(Integer.parseInt(chapter) + 1);
                chapter = number;
                section = 0;
            }
        }
    }

    private static Set<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(result -> result.group(1)).collect(toCollection(TreeSet::new));
    }

    /** The files that the project keeps. */
    private static List<Path> files() {
        List<Path> kept = new ArrayList<>();
        for (String root : List.of("src", "airfoils", "validation", "examples")) {
            try (Stream<Path> walk = Files.walk(Path.of(root))) {
                walk.filter(Files::isRegularFile)
                        .filter(file -> TEXT.matcher(file.toString()).matches())
                        .forEach(kept::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        for (String name : List.of("README.md", "DEVELOPERS.md", "CHANGELOG.md", "THIRD-PARTY.txt", "pom.xml")) {
            kept.add(Path.of(name));
        }
        return kept;
    }

    private static String text(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
