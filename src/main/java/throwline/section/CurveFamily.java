package throwline.section;

/**
 * The curves of one section with its surface held, over Reynolds number: what a search over speeds asks for again and
 * again. Safe for several threads.
 */
@FunctionalInterface
public interface CurveFamily {

    /** The curve at a Reynolds number on the section's chord, any positive value. */
    SectionCurve at(double reynolds);
}
