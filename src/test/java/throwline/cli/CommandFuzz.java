package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole commands over 500 models made up from seeds, in one process. Every model goes through {@code compare}, and by turns
 * through one of the other commands or through {@code compare} once more with something changed of which the effect is
 * known, so that all of it takes less than a minute.
 */
class CommandFuzz {

    private static final int MODELS = 500;
    private static final long SEED = 20_261_127;

    /** Share by which a number may differ where lengths and weights were read from other units. */
    private static final double ROUNDING = 2e-5;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void rulesHold() {
        List<String> broken = IntStream.range(0, MODELS)
                .parallel()
                .mapToObj(this::broken)
                .flatMap(List::stream)
                .toList();
        assertThat(broken).isEmpty();
    }

    private List<String> broken(int number) {
        long seed = SEED + number;
        try {
            examine(number, new PlausibleModel(seed));
            return List.of();
        } catch (AssertionError | RuntimeException e) {
            String said = String.valueOf(e.getMessage());
            return List.of("seed " + seed + ": " + said.substring(0, Math.min(600, said.length())));
        }
    }

    private void examine(int number, PlausibleModel model) {
        Map<String, Row> rows = compared(model.file());
        String name = String.valueOf(number);
        switch (number % 10) {
            case 0, 5 -> heavier(compared(model.withHeavierPack()));
            case 1 -> thinner(rows, compared(model.at(1500)));
            case 2, 7 -> same(rows, compared(model.renamed()), 0);
            case 3 -> same(rows, compared(model.imperial()), ROUNDING);
            case 4 -> clean(model.file(), "find", "-", "--come-down", "9", "--at", "13m/s", "--json");
            case 6 -> clean(model.file(), "fly", "-", "--setup", "landing", "--json");
            case 8 -> sheet(model.file(), folder.resolve(name));
            default -> clean(model.file(), "wing", "-", "--setup", "landing", "--incidence", "-2:10:4", "--json");
        }
    }

    /** Neither a fault nor a number that is none. */
    private static ProgramRun clean(String file, String... call) {
        ProgramRun run = ProgramRun.of(Commands.all(), file, call);
        assertThat(run.exitCode()).as(run.err()).isIn(0, 3);
        assertThat(run.out() + run.err()).doesNotContain("NaN", "Infinity", "\u221e", "Exception");
        return run;
    }

    /** One line of the table. */
    private record Row(OptionalDouble value, OptionalDouble low, OptionalDouble high, String why) {}

    /**
     * All numbers of a comparison: each lies in its band, or has a reason why it is not there; the exit code tells
     * which. Limits of servos and a landing in wind are asked for only where the file has servos and wind, and these have none.
     */
    private static Map<String, Row> compared(String file) {
        ProgramRun run = clean(file, "compare", "-", "--csv");
        Map<String, Row> rows = new TreeMap<>();
        List<String> lines =
                run.out().lines().map(PlausibleModel::withFirstNames).toList();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            Row row = new Row(number(cells.get(6)), number(cells.get(7)), number(cells.get(8)), cells.get(10));
            boolean known = row.value.isPresent() && row.low.isPresent() && row.high.isPresent();
            assertThat(known).as(line).isEqualTo(row.why.isEmpty());
            assertThat(known || row.value.isEmpty()).as(line).isTrue();
            if (known) {
                assertThat(row.value.getAsDouble()).as(line).isBetween(row.low.getAsDouble(), row.high.getAsDouble());
            }
            rows.put(String.join(" ", cells.subList(1, 5)), row);
        }
        boolean all = rows.entrySet().stream()
                .filter(row -> !row.getKey().matches(".* (flapSpeedLimit|landingDistanceInWind) "))
                .allMatch(row -> row.getValue().value.isPresent());
        assertThat(run.exitCode()).isEqualTo(all ? 0 : 3);
        return rows;
    }

    private static void heavier(Map<String, Row> rows) {
        for (String setUp : List.of("clean", "landing")) {
            notLess(number(rows, "light " + setUp + " stallSpeed "), number(rows, "loaded " + setUp + " stallSpeed "));
        }
    }

    private static void thinner(Map<String, Row> low, Map<String, Row> high) {
        for (String setUp : List.of("clean", "landing")) {
            notLess(
                    number(low, "light " + setUp + " approachSpeed "),
                    number(high, "light " + setUp + " approachSpeed "));
        }
    }

    private static OptionalDouble number(Map<String, Row> rows, String name) {
        assertThat(rows).containsKey(name);
        return Optional.ofNullable(rows.get(name)).map(Row::value).orElseThrow();
    }

    private static void notLess(OptionalDouble first, OptionalDouble second) {
        if (first.isPresent() && second.isPresent()) {
            assertThat(second.getAsDouble()).isGreaterThanOrEqualTo(first.getAsDouble());
        }
    }

    private static void same(Map<String, Row> one, Map<String, Row> other, double rounding) {
        assertThat(other.keySet()).isEqualTo(one.keySet());
        one.forEach((name, row) -> {
            OptionalDouble second = number(other, name);
            assertThat(second.isPresent()).as(name).isEqualTo(row.value.isPresent());
            if (second.isPresent()) {
                double size = Math.max(1, Math.abs(row.value.getAsDouble()));
                assertThat(second.getAsDouble()).as(name).isCloseTo(row.value.getAsDouble(), within(rounding * size));
            }
        });
    }

    private static void sheet(String file, Path out) {
        clean(file, "sheet", "-", "--out", out.toString());
        try {
            assertThat(Files.readString(out.resolve("throws.csv"), StandardCharsets.UTF_8))
                    .doesNotContain("NaN", "Infinity");
            assertThat(out.resolve("bench.pdf")).isNotEmptyFile();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static OptionalDouble number(String cell) {
        return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        boolean quoted = false;
        StringBuilder cell = new StringBuilder();
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
