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

    /**
     * The less trustworthy of two. What the section method makes of an outline was compared with measurements on the attached
     * section alone: with a surface moved or past the stall on top of it, nothing is known but that another airfoil stands in.
     */
    public Basis weaker(Basis other) {
        Basis weaker = compareTo(other) >= 0 ? this : other;
        Basis better = compareTo(other) >= 0 ? other : this;
        return weaker == COMPUTED && (better == METHOD || better == PLATE) ? LIKENESS : weaker;
    }
}
