package throwline.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import throwline.model.Assumption;
import throwline.units.Dimension;
import throwline.units.Display;
import throwline.units.QuantityPrinter;

/** Takes what the file gives, or a guess that it keeps a record of. */
final class Assumed {

    private final List<Assumption> all;
    private final QuantityPrinter printer;

    /**
     * A record of guesses.
     *
     * @param soFar those that were made before
     * @param display in which units the others are written
     */
    Assumed(List<Assumption> soFar, Display display) {
        all = new ArrayList<>(soFar);
        printer = new QuantityPrinter(display);
    }

    /**
     * All of them, those that belong together beside each other.
     *
     * @param order the first steps of their paths, in the order wanted
     */
    List<Assumption> all(List<String> order) {
        return all.stream()
                .sorted(Comparator.comparingInt(a -> order.indexOf(a.path().split("\\.", 2)[0])))
                .toList();
    }

    /**
     * The value that stands at a key, else the guess.
     *
     * @param owner what the key belongs to
     * @param key its name
     * @param dimension of the value
     * @param guess in SI units
     */
    double amount(Branch owner, String key, Dimension dimension, double guess) {
        OptionalDouble given = owner.child(key).amount();
        if (given.isPresent()) {
            return given.getAsDouble();
        }
        note(owner.child(key), printer.print(guess, dimension));
        return guess;
    }

    double length(Branch owner, String key, double guess) {
        return amount(owner, key, Dimension.LENGTH, guess);
    }

    /** True where the value of a key is a guess. */
    boolean isNoted(Branch where) {
        return all.stream().anyMatch(a -> a.path().equals(where.path()));
    }

    void note(Branch where, String value) {
        all.add(new Assumption(where.path(), value));
    }
}
