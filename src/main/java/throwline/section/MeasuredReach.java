package throwline.section;

/**
 * Measured part of a curve; blends with it.
 *
 * @param low lowest measured angle from the lower stall upwards, rad; 0 where the lower stall was measured too
 * @param before how far before the stall the run ended, rad; 0 where it passed
 * @param past how far past the stall lift was measured or taken from a neighbour, rad
 * @param momentPast how far past the stall the moment was measured, rad; 0 where it is nominal
 */
record MeasuredReach(double low, double before, double past, double momentPast) {

    MeasuredReach blend(MeasuredReach other, double weight) {
        return new MeasuredReach(
                low + weight * (other.low - low),
                before + weight * (other.before - before),
                past + weight * (other.past - past),
                momentPast + weight * (other.momentPast - momentPast));
    }
}
