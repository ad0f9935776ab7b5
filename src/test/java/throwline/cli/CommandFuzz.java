package throwline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whole commands over models made up from seeds, in one process: each model goes through {@code compare} (with a
 * heavier pack), {@code fly}, {@code find}, {@code wing} and {@code sheet}, and by turns once more through
 * {@code compare} in thinner air, with other names in another order, or in other units.
 */
class CommandFuzz {

    /** So many take two idle cores one to two minutes. */
    private static final int MODELS = Integer.getInteger("throwline.models", 300);

    private static final long SEED = 20_261_127;

    /** Share by which a number may differ where lengths and weights were read from other units. */
    private static final double ROUNDING = 2e-5;

    /** Wants of {@code find}, taken by turns; the search for throws is the longest of them. */
    private static final List<List<String>> WANTS = List.of(
            List.of("--come-down", "9", "--at", "13m/s"),
            List.of("--no-trim-change", "landing"),
            List.of("--roll", "60deg/s", "--at", "13m/s"),
            List.of("--roll-help"),
            List.of("--tightest-loop", "--at", "16m/s"));

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
        List<String> broken = new ArrayList<>();
        try {
            examine(number, new PlausibleModel(seed), broken);
        } catch (AssertionError | RuntimeException e) {
            broken.add(String.valueOf(e));
        }
        return broken.stream()
                .map(said -> "seed " + seed + ": " + said.substring(0, Math.min(600, said.length())))
                .toList();
    }

    private void examine(int number, PlausibleModel model, List<String> broken) {
        String file = model.file();
        ComparedRows rows = compared(model.withHeavierPack(), broken);
        broken.addAll(rows.heavierSlower());
        ComparedRows light = rows.withPack("light");
        switch (number % 3) {
            case 0 -> broken.addAll(compared(model.at(1500), broken).slowerThan(rows));
            case 1 -> broken.addAll(light.notSameBytes(compared(model.renamed(), broken)));
            default -> broken.addAll(light.notWithin(ROUNDING, compared(model.imperial(), broken)));
        }
        run(broken, file, "fly", "-", "--setup", number % 4 == 0 ? "clean" : "landing", "--json");
        List<String> find = new ArrayList<>(List.of("find", "-", "--json"));
        find.addAll(WANTS.get(number % WANTS.size()));
        run(broken, file, find.toArray(String[]::new));
        run(broken, file, "wing", "-", "--setup", "landing", "--incidence", "-2:10:4", "--json");
        sheet(broken, file, light, folder.resolve(String.valueOf(number)));
    }

    private static ProgramRun run(List<String> broken, String file, String... call) {
        ProgramRun run = ProgramRun.of(Commands.all(), file, call);
        check(broken, call[0], EnumSet.allOf(AnswerRule.class), run);
        return run;
    }

    private static void check(List<String> broken, String command, Set<AnswerRule> rules, ProgramRun run) {
        for (AnswerRule rule : rules) {
            rule.broken(run).forEach(fault -> broken.add(command + " " + rule + ": " + fault));
        }
    }

    private static ComparedRows compared(String file, List<String> broken) {
        return ComparedRows.of(run(broken, file, "compare", "-", "--csv").out());
    }

    /** The sheets name what is missing as the comparison does, and end as it ends. */
    private static void sheet(List<String> broken, String file, ComparedRows compared, Path out) {
        ProgramRun run = ProgramRun.of(Commands.all(), file, "sheet", "-", "--out", out.toString());
        try {
            String throwsFile = Files.readString(out.resolve("throws.csv"), StandardCharsets.UTF_8);
            String card = Files.readString(out.resolve("field-card.html"), StandardCharsets.UTF_8);
            ProgramRun files = new ProgramRun(run.exitCode(), throwsFile + card, run.err());
            new CardDangers(card).broken().forEach(fault -> broken.add("field card: " + fault));
            check(broken, "sheet", EnumSet.complementOf(EnumSet.of(AnswerRule.SETTLED)), files);
            assertThat(run.exitCode()).isEqualTo(compared.isIncomplete() ? 3 : 0);
            assertThat(out.resolve("bench.pdf")).isNotEmptyFile();
        } catch (IOException e) {
            throw new UncheckedIOException(run.err(), e);
        }
    }
}
