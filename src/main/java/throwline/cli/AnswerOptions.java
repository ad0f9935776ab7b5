package throwline.cli;

import java.util.function.Supplier;
import picocli.CommandLine.Option;
import throwline.report.document.Document;
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
     * @param document the answer as a document
     */
    void answer(Context context, Display display, Supplier<String> data, Document document) {
        answer(context, display, data, document, true);
    }

    /** The same, folded unless all is wanted. */
    void answer(Context context, Display display, Supplier<String> data, Document document, boolean all) {
        if (json) {
            context.terminal().data(data.get());
        } else {
            context.terminal().answer(context.shown(document, context.page(display), all));
        }
    }
}
