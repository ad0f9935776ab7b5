package throwline.cli;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import throwline.model.Model;
import throwline.model.Pack;

/** Battery pack that a person may name. */
final class PackOption {

    private static final String PACK = "--pack";

    @Option(names = PACK, paramLabel = "NAME", order = 20)
    private @Nullable String name;

    /** The pack named; the first of the model where none is. */
    Pack one(Context context, Model model) {
        return named(context, model).orElse(model.packs().get(0));
    }

    /** The pack named alone; all of the model where none is. */
    List<Pack> all(Context context, Model model) {
        return named(context, model).map(List::of).orElse(model.packs());
    }

    private Optional<Pack> named(Context context, Model model) {
        return Optional.ofNullable(name)
                .map(wanted -> new Chosen(context).among(PACK, wanted, model.name(), model.packs(), Pack::name));
    }
}
