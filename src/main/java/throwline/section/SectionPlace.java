package throwline.section;

/**
 * A section on a straight line between two airfoils.
 *
 * @param inner the airfoil at the inner end
 * @param outer the airfoil at the outer end
 * @param weight share of the outer one, 0 to 1
 */
public record SectionPlace(Airfoil inner, Airfoil outer, double weight) {

    /** A section that is one airfoil. */
    public static SectionPlace of(Airfoil airfoil) {
        return new SectionPlace(airfoil, airfoil, 0);
    }
}
