package throwline.cli;

import java.util.List;
import java.util.function.Function;
import throwline.model.AirfoilName;

/** Finds what the person named among what the model has; case, blanks and hyphens do not count. */
final class Chosen {

    private final Context context;

    Chosen(Context context) {
        this.context = context;
    }

    /**
     * The one of this name.
     *
     * @param option the option that names it
     * @param name as the person wrote it
     * @param model whose these are
     * @param all what there is
     * @param nameOf their names
     * @throws WrongInput where there is none
     */
    <T> T among(String option, String name, String model, List<T> all, Function<T, String> nameOf) {
        String key = new AirfoilName(name).key();
        return all.stream()
                .filter(each -> new AirfoilName(nameOf.apply(each)).key().equals(key))
                .findFirst()
                .orElseThrow(() -> new WrongInput(context.words()
                        .say(
                                "cli.choice",
                                option,
                                name,
                                model,
                                String.join(", ", all.stream().map(nameOf).toList()))));
    }
}
