package throwline.section;

/**
 * Basis of every stretch of a curve.
 *
 * @param attached the measured stretch
 * @param lowerPlate at and below this angle the plate model weighs more than half, rad
 * @param from lower end of the measured stretch, rad
 * @param to upper end of the measured stretch, rad
 * @param upperPlate at and above this angle the plate model weighs more than half, rad
 */
record BasisMap(Basis attached, double lowerPlate, double from, double to, double upperPlate) {

    Basis at(double alpha) {
        if (alpha <= lowerPlate || alpha >= upperPlate) {
            return attached.weaker(Basis.PLATE);
        }
        return alpha < from || alpha > to ? attached.weaker(Basis.METHOD) : attached;
    }

    BasisMap blend(BasisMap other, double weight) {
        Basis both = weight <= 0 ? attached : weight >= 1 ? other.attached : attached.weaker(other.attached);
        Basis blended = weight <= 0 || weight >= 1 ? both : both.weaker(Basis.BETWEEN);
        return new BasisMap(
                blended,
                lowerPlate + weight * (other.lowerPlate - lowerPlate),
                from + weight * (other.from - from),
                to + weight * (other.to - to),
                upperPlate + weight * (other.upperPlate - upperPlate));
    }
}
