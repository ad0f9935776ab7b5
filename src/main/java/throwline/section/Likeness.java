package throwline.section;

import java.util.Locale;
import java.util.Optional;

/**
 * Reason why the measurements of another airfoil stand for one that nobody measured.
 *
 * @param donor the airfoil whose measurements these are
 * @param computedFrom Reynolds number from which they were moved to what the section method makes of both outlines; below
 *     it, and throughout where it is infinite, they stand in
 * @param notComputed why an outline that is known was not put to use; empty where it was, or where none is known
 */
public record Likeness(String donor, double computedFrom, Optional<NotComputed> notComputed) {

    /** Above this Reynolds number the section method was compared with no measurement (methods manual 3.12). */
    private static final double FASTEST = 500_000;

    /** A stand-in, moved to the zero-lift angle alone. */
    public static Likeness standIn(String donor) {
        return new Likeness(donor, Double.POSITIVE_INFINITY, Optional.empty());
    }

    /** Measurements that the section method moved, from a Reynolds number on. */
    public static Likeness computed(String donor, double from) {
        return new Likeness(donor, from, Optional.empty());
    }

    /** This one with the reason why it only stands in. */
    public Likeness because(NotComputed reason) {
        return new Likeness(donor, computedFrom, Optional.of(reason));
    }

    /** True where the section method moved them. */
    public boolean computed() {
        return Double.isFinite(computedFrom);
    }

    /** Key of the note that tells a person. */
    public String note() {
        String plain = computed() ? "note.airfoil.computed" : "note.airfoil.likeness";
        return notComputed
                .map(reason -> plain + "." + reason.name().toLowerCase(Locale.ROOT))
                .orElse(plain);
    }

    /** Basis at a Reynolds number. */
    public Basis basis(double reynolds) {
        return reynolds >= computedFrom && reynolds <= FASTEST ? Basis.COMPUTED : Basis.LIKENESS;
    }
}
