package throwline.section;

/** Basis of a stretch of a section curve, the most trustworthy first. */
public enum Basis {
    /** Measured at this Reynolds number and deflection. */
    MEASURED,
    /** Interpolated between measurements. */
    BETWEEN,
    /** A published method applied to a measured curve. */
    METHOD,
    /** Flow off the section: the plate model. */
    PLATE,
    /** A measured curve moved to another Reynolds number by a law. */
    MOVED,
    /** Beyond the reach of any law: held at the nearest. */
    CLAMPED,
    /** Measured on another airfoil and moved to what the section method makes of both outlines. */
    COMPUTED,
    /** Measured on another airfoil, the nearest by shape, and moved to the zero-lift angle of this one. */
    LIKENESS;

    /** The less trustworthy of two. */
    public Basis weaker(Basis other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
