package throwline.window.session;

import java.util.Locale;

/** The name that is proposed for the file of a model that has none. */
final class FileName {

    private final String model;

    /** A name for the file of a model of this name. */
    FileName(String model) {
        this.model = model;
    }

    /** Letters and digits of any alphabet, joined by hyphens: a name that every system takes. */
    String proposal() {
        String plain = model.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-+|-+$", "");
        return (plain.isEmpty() ? "model" : plain) + ".yaml";
    }
}
