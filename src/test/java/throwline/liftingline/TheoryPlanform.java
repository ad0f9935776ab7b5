package throwline.liftingline;

/** Planforms of theory: an ellipse or a straight taper of given aspect ratio, span 2 m, straight quarter-chord line. */
record TheoryPlanform(boolean elliptic, double aspect, double taper, double tipTwist) implements Planform {

    static TheoryPlanform ellipse(double aspect) {
        return new TheoryPlanform(true, aspect, 0, 0);
    }

    static TheoryPlanform tapered(double aspect, double taper) {
        return new TheoryPlanform(false, aspect, taper, 0);
    }

    TheoryPlanform twisted(double tip) {
        return new TheoryPlanform(elliptic, aspect, taper, tip);
    }

    @Override
    public double semiSpan() {
        return 1;
    }

    @Override
    public double[] breaks() {
        return new double[0];
    }

    @Override
    public double chord(double y) {
        if (elliptic) {
            return 8 / (Math.PI * aspect) * Math.sqrt(1 - y * y);
        }
        return 4 / (aspect * (1 + taper)) * (1 - (1 - taper) * y);
    }

    @Override
    public double twist(double y) {
        return tipTwist * y;
    }

    @Override
    public double quarterChord(double y) {
        return 0;
    }

    @Override
    public double sweep(double y) {
        return 0;
    }

    @Override
    public double dihedral() {
        return 0;
    }
}
