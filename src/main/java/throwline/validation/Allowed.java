package throwline.validation;

/**
 * Range in which the answer to a check must lie.
 *
 * @param low smallest value
 * @param high largest value
 */
record Allowed(double low, double high) {

    /**
     * Reads a cell: {@code 8 %} of the value either way, {@code 0.7} either way, or a range {@code 0.84..0.90}, of which one
     * end may be left open.
     *
     * @param row the row
     * @param value what was measured or published
     */
    static Allowed of(CaseRow row, double value) throws UnreadableCase {
        String text = row.text("allowed");
        try {
            int dots = text.indexOf("..");
            if (dots >= 0) {
                return new Allowed(
                        end(text.substring(0, dots), Double.NEGATIVE_INFINITY),
                        end(text.substring(dots + 2), Double.POSITIVE_INFINITY));
            }
            double half = text.endsWith("%")
                    ? Math.abs(value) * Double.parseDouble(text.substring(0, text.length() - 1)) / 100
                    : Double.parseDouble(text);
            return new Allowed(value - half, value + half);
        } catch (NumberFormatException e) {
            throw row.wrong("allowed", "case.allowed");
        }
    }

    private static double end(String text, double open) {
        return text.isBlank() ? open : Double.parseDouble(text);
    }
}
