package throwline.cli;

import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import throwline.report.Page;
import throwline.units.Display;

/** Form of an answer: a table for a person, or JSON for a script. */
final class AnswerOptions {

    @Option(names = "--json", order = 40)
    private boolean json;

    /** True where JSON is wanted. */
    boolean json() {
        return json;
    }

    /**
     * Answers on standard output.
     *
     * @param context of the command
     * @param display units of the table
     * @param data the answer as JSON
     * @param table the answer as a table on a page
     */
    void answer(Context context, Display display, Supplier<String> data, Function<Page, String> table) {
        if (json) {
            context.terminal().data(data.get());
        } else {
            context.terminal().answer(table.apply(context.page(display)));
        }
    }
}
