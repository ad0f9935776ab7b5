package throwline.section.computed;

/** Figures of a section that are predicted, each by a rule that is linear in what is fitted. */
public enum SectionFigure {
    /** Zero-lift angle, rad: that without friction, less what the boundary layer takes of the camber, of the tail most. */
    ZERO_LIFT {
        @Override
        double transformed(double value) {
            return value;
        }

        @Override
        double value(double transformed) {
            return transformed;
        }

        @Override
        double known(SectionTraits traits, double reynolds) {
            return traits.zeroLiftAngle();
        }

        @Override
        double[] terms(SectionTraits traits, double log) {
            return new double[] {traits.moment(), traits.moment() * log, traits.camber(), traits.camber() * log};
        }
    },
    /** Most lift: the rule of the highest speed (W. O. Valarezo, V. D. Chin, Journal of Aircraft 31, 1994, as an idea). */
    MAX_LIFT {
        @Override
        double[] terms(SectionTraits traits, double log) {
            return new double[] {
                1,
                log,
                log * (traits.thickness() - USUAL),
                Math.log(traits.peakLift()),
                traits.edge(),
                traits.camber(),
                traits.camber() * log
            };
        }
    },
    /** Angle of attack of most lift, rad. */
    STALL_ANGLE {
        @Override
        double transformed(double value) {
            return value;
        }

        @Override
        double value(double transformed) {
            return transformed;
        }

        @Override
        double[] terms(SectionTraits traits, double log) {
            return new double[] {1, log, log * (traits.thickness() - USUAL), traits.peakAngle(), traits.thickness()};
        }
    },
    /** Drag at the first of the lifts looked at: what the boundary layer says of it, in logarithms. */
    DRAG_LOW {
        @Override
        double known(SectionTraits traits, double reynolds) {
            return traits.drag().log(0, reynolds);
        }
    },
    /** Drag at the second. */
    DRAG_MIDDLE {
        @Override
        double known(SectionTraits traits, double reynolds) {
            return traits.drag().log(1, reynolds);
        }
    },
    /** Drag at the third. */
    DRAG_HIGH {
        @Override
        double known(SectionTraits traits, double reynolds) {
            return traits.drag().log(2, reynolds);
        }
    };

    /** Thickness about which the effect of Reynolds number is written. */
    private static final double USUAL = 0.11;

    /** What the rule is linear in. */
    double transformed(double value) {
        return Math.log(value);
    }

    /** Back from it. */
    double value(double transformed) {
        return Math.exp(transformed);
    }

    /** Part of the transformed figure that is not fitted. */
    double known(SectionTraits traits, double reynolds) {
        return 0;
    }

    /** What the fitted factors multiply. */
    double[] terms(SectionTraits traits, double log) {
        double thick = traits.thickness();
        return new double[] {1, log, thick, traits.camber(), log * thick, log * traits.camber()};
    }
}
