package throwline.report.data;

/** Numbers as JSON has them, for those who show them elsewhere. */
public final class SixFigures {

    private SixFigures() {}

    /** Six significant figures; "null" where it is no number. */
    public static String of(double value) {
        return JsonWriter.number(value);
    }
}
