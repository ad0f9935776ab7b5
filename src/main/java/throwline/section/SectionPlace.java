package throwline.section;

/**
 * A section on a straight line between two airfoils.
 *
 * @param inner the airfoil at the inner end
 * @param outer the airfoil at the outer end
 * @param weight share of the outer one, 0 to 1
 */
public record SectionPlace(Airfoil inner, Airfoil outer, double weight) {

    /**
     * {@inheritDoc} Written out, as in all small records by which a start of the program looks things up: what Java
     * makes for a record when it is first asked takes a millisecond each.
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof SectionPlace place
                && inner.equals(place.inner)
                && outer.equals(place.outer)
                && Double.compare(weight, place.weight) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * inner.hashCode() + outer.hashCode()) + Double.hashCode(weight);
    }

    /** A section that is one airfoil. */
    public static SectionPlace of(Airfoil airfoil) {
        return new SectionPlace(airfoil, airfoil, 0);
    }
}
