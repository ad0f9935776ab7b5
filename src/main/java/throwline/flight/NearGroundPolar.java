package throwline.flight;

/** Drag and the most lift of a balanced model at any height above the ground; heights are those of the wheels, m. */
interface NearGroundPolar {

    /** Drag coefficient at a lift coefficient; beyond {@link #limit} that of the limit. */
    double drag(double lift, double height);

    /** Largest lift coefficient that wing and elevator allow. */
    double limit(double height);
}
