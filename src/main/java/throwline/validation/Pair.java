package throwline.validation;

/**
 * A measured value and the prediction that stands for it, for the statistics.
 *
 * @param figure what it is
 * @param basis what the prediction rests on
 * @param group airfoil or aeroplane: values of one group are not independent of each other
 * @param condition what holds for it
 * @param measured in the unit of the figure
 * @param predicted likewise
 */
public record Pair(Figure figure, String basis, String group, String condition, double measured, double predicted) {

    /** Positive where the prediction is too large. */
    public double error() {
        return figure.error(measured, predicted);
    }
}
