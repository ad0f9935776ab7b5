package throwline.model;

import java.util.Locale;

/**
 * Name that a person gave an airfoil: a library name, a folder, a file or words. Two names are equal when they differ
 * in case, blanks, hyphens, underscores or points only.
 *
 * @param text as written
 */
public record AirfoilName(String text) {

    /** The name without what does not count: case, blanks, hyphens, underscores, points. */
    public String key() {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_.\\-]+", "");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AirfoilName name && (text.equals(name.text) || key().equals(name.key()));
    }

    @Override
    public int hashCode() {
        return key().hashCode();
    }
}
