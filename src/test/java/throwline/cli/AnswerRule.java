package throwline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The rules that the answer of every command must keep, whatever the model. An answer is JSON, CSV or text. */
enum AnswerRule {

    /** The command ends with an answer, not with a fault. */
    NO_FAULT {
        @Override
        List<String> broken(ProgramRun run) {
            boolean answered = run.exitCode() == 0 || run.exitCode() == 3;
            return answered && found("Exception|Error:|\tat ", run).isEmpty()
                    ? List.of()
                    : List.of("exit code " + run.exitCode() + ": " + run.err());
        }
    },

    /** No number that is none. */
    NUMBERS {
        @Override
        List<String> broken(ProgramRun run) {
            return found("[^\n]{0,80}(NaN|Infinity|\u221e)", run);
        }
    },

    /** Each number lies in its band, and a band begins below its end. */
    BANDS {
        @Override
        List<String> broken(ProgramRun run) {
            Stream<MatchResult> all = Stream.of(JSON_BAND, CSV_BAND)
                    .flatMap(p -> p.matcher(run.out()).results());
            return all.filter(band -> !isInOrder(band)).map(MatchResult::group).toList();
        }
    },

    /** A number that is not there has a reason, and one that has a reason is not there. */
    REASONS {
        @Override
        List<String> broken(ProgramRun run) {
            List<String> broken = new ArrayList<>(found("\"value\": null(?!, \"why\": \"[^\"]+\")", run));
            broken.addAll(found("\"value\": [-0-9][^{}]*\"why\"", run));
            ComparedRows.of(run.out()).all().forEach((name, row) -> {
                boolean known = row.value().isPresent()
                        && row.low().isPresent()
                        && row.high().isPresent();
                if (known != row.why().isEmpty() || known != row.value().isPresent()) {
                    broken.add(name + " has no number or no reason");
                }
            });
            return broken;
        }
    },

    /** Where something did not settle or was not found, its number is not shown and the exit code says so. */
    SETTLED {
        @Override
        List<String> broken(ProgramRun run) {
            List<String> broken = new ArrayList<>();
            boolean unsettled = run.out().contains("\"converged\": false")
                    || Pattern.compile("^  \"met\": false", Pattern.MULTILINE)
                            .matcher(run.out())
                            .find()
                    || ComparedRows.of(run.out()).isIncomplete()
                    || (isFlight(run) && !found(MISSING, run).isEmpty());
            if (unsettled && run.exitCode() == 0) {
                broken.add("exit code 0, though something did not settle");
            }
            if (!unsettled && run.exitCode() == 3) {
                broken.add("exit code 3, though all is there");
            }
            return broken;
        }
    };

    /** A number of the set-up of {@code fly}, or one of its roll rates, that every model has. */
    private static final String MISSING =
            "(?m)^ {4,6}\"(?!(?:" + ComparedRows.NOT_ALWAYS + ")\")[^\"]+\": \\{\"value\": null";

    private static final Pattern JSON_BAND =
            Pattern.compile("(?:\"value\": ([^,]+), )?\"low\": ([^,}]+), \"high\": ([^,}]+)");

    private static final Pattern CSV_BAND = Pattern.compile("(?m)^(?:[^,\n]*,){6}([-0-9][^,]*),([^,]+),([^,]+),");

    /** What breaks this rule in an answer; empty where it is kept. */
    abstract List<String> broken(ProgramRun run);

    private static boolean isFlight(ProgramRun run) {
        return run.out().contains("\"format\": \"fly/");
    }

    private static boolean isInOrder(MatchResult band) {
        double low = Double.parseDouble(band.group(2));
        double high = Double.parseDouble(band.group(3));
        double value = band.group(1) == null ? low : Double.parseDouble(band.group(1));
        return low <= value && value <= high;
    }

    private static List<String> found(String pattern, ProgramRun run) {
        return Pattern.compile(pattern)
                .matcher(run.out() + run.err())
                .results()
                .map(MatchResult::group)
                .toList();
    }
}
