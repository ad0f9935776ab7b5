package throwline.input;

import java.util.List;
import java.util.Optional;
import throwline.units.Dimension;
import throwline.units.QuantityReader;
import throwline.units.ReadQuantity;

/**
 * Row of the table of keys, with the rows below it.
 *
 * @param path with {@code *} for a name of the owner's choice and {@code []} for the entries of a list
 * @param kind what may stand there
 * @param dimension of a quantity
 * @param choices the words allowed
 * @param need whether it must stand there, and what is taken where it does not
 * @param needText the default, or the key that makes it superfluous
 * @param range limits of a quantity or count
 * @param example how it may be written
 * @param meaning one sentence: what it is and what it is measured from
 * @param reason why this default
 * @param children rows below it, in the order of the table
 */
record KeyRow(
        String path,
        Kind kind,
        Optional<Dimension> dimension,
        List<String> choices,
        Need need,
        String needText,
        Optional<Range> range,
        String example,
        String meaning,
        String reason,
        List<KeyRow> children) {

    /** The step for a name of the owner's choice. */
    static final String ANY_NAME = "*";

    /** The step for the entries of a list. */
    static final String ANY_ENTRY = "[]";

    /** What may stand at a key. */
    enum Kind {
        GROUP,
        NAMED,
        LIST,
        TEXT,
        NAMES,
        AIRFOIL,
        VERSION,
        COUNT,
        CHOICE,
        DEFLECTION,
        THROWS,
        THROW,
        QUANTITY
    }

    /** Whether a key must stand in the file. */
    enum Need {
        REQUIRED,
        REQUIRED_UNLESS,
        OPTIONAL,
        OR_NONE,
        DEFAULT,
        WORKED_OUT
    }

    /**
     * Limits of a quantity, both allowed. They are worked out when they are asked for: few keys of the table stand in a file.
     *
     * @param dimension of the quantity
     * @param leastText as in the table
     * @param mostText as in the table
     */
    record Range(Dimension dimension, String leastText, String mostText) {

        /** The lower limit in SI units. */
        double least() {
            return si(leastText);
        }

        /** The upper limit in SI units. */
        double most() {
            return si(mostText);
        }

        boolean holds(double value) {
            return value >= least() && value <= most();
        }

        private double si(String text) {
            if (QuantityReader.read(text, dimension) instanceof ReadQuantity.Amount amount) {
                return amount.quantity().value();
            }
            throw new IllegalStateException("the table of keys holds no quantity: " + text);
        }
    }

    /** The last step of the path. */
    String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The row below with this name; case, blanks and hyphens do not count. */
    Optional<KeyRow> child(String written) {
        String wanted = NearestName.key(written);
        return children.stream()
                .filter(k -> NearestName.key(k.name()).equals(wanted))
                .findFirst();
    }

    /** The row below for names of the owner's choice. */
    Optional<KeyRow> anyChild() {
        return children.stream().filter(k -> k.name().equals(ANY_NAME)).findFirst();
    }

    /** The rows below with fixed names. */
    List<KeyRow> fixedChildren() {
        return children.stream().filter(k -> !k.name().equals(ANY_NAME)).toList();
    }
}
