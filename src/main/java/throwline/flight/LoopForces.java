package throwline.flight;

/** Forces on a model in a loop over its weight, at an airspeed in m/s. */
interface LoopForces {

    /** Across the path, to the middle of the loop. */
    double across(double speed);

    /** Along the path, against it; negative where the propeller pulls more than the drag. */
    double against(double speed);

    /** Those of coefficients that stay, throttle shut. */
    static LoopForces of(SteadyDescent balance, double lift, double drag) {
        return new LoopForces() {
            @Override
            public double across(double speed) {
                return lift / balance.resultantFor(speed);
            }

            @Override
            public double against(double speed) {
                return drag / balance.resultantFor(speed);
            }
        };
    }
}
