package throwline.cli;

import picocli.CommandLine.Option;
import throwline.model.Model;
import throwline.model.SetUp;

/** Set-up that a person must name. */
final class SetUpOption {

    private static final String SET_UP = "--setup";

    @Option(names = SET_UP, required = true, paramLabel = "NAME", order = 0)
    private String name = "";

    /** The set-up named. */
    SetUp of(Context context, Model model) {
        return new Chosen(context).among(SET_UP, name, model.name(), model.setUps(), SetUp::name);
    }
}
