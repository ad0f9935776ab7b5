package throwline.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Options under the names that they once had: still read, no longer shown. */
final class FormerOptions {

    /** The option behind which everything is an argument. */
    private static final String END = "--";

    private static final Map<String, String> TODAY = Map.of(
            "--level-trim", "--no-trim-change",
            "--mixed", "--elevator-mix",
            "--since", "--changes-from");

    private FormerOptions() {}

    /** A command line with the names of today. */
    static String[] replaced(String... arguments) {
        List<String> given = List.of(arguments);
        int end = given.contains(END) ? given.indexOf(END) : given.size();
        String[] today = arguments.clone();
        for (int i = 0; i < end; i++) {
            today[i] = replaced(arguments[i]);
        }
        return today;
    }

    private static String replaced(String argument) {
        String[] parts = argument.split("=", 2);
        parts[0] = TODAY.getOrDefault(parts[0], parts[0]);
        return String.join("=", Arrays.asList(parts));
    }
}
