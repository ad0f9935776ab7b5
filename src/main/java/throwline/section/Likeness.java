package throwline.section;

/**
 * Reason why the measurements of another airfoil stand for one that nobody measured.
 *
 * @param donor the airfoil whose measurements these are
 * @param computedFrom Reynolds number from which they were moved to what the section method makes of both outlines; below
 *     it, and throughout where it is infinite, they stand in
 */
public record Likeness(String donor, double computedFrom) {

    /** Above this Reynolds number the section method was compared with no measurement (methods manual 3.12). */
    private static final double FASTEST = 500_000;

    /** A stand-in, moved to the zero-lift angle alone. */
    public static Likeness standIn(String donor) {
        return new Likeness(donor, Double.POSITIVE_INFINITY);
    }

    /** True where the section method moved them. */
    public boolean computed() {
        return Double.isFinite(computedFrom);
    }

    /** Key of the note that tells a person. */
    public String note() {
        return computed() ? "note.airfoil.computed" : "note.airfoil.likeness";
    }

    /** Basis at a Reynolds number. */
    public Basis basis(double reynolds) {
        return reynolds >= computedFrom && reynolds <= FASTEST ? Basis.COMPUTED : Basis.LIKENESS;
    }
}
