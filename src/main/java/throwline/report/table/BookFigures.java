package throwline.report.table;

import java.util.Locale;
import throwline.validation.Book;
import throwline.validation.CaseResult;
import throwline.validation.Check;
import throwline.validation.Statistics;
import throwline.words.Words;

/** Numbers and names of the validation book as text. */
final class BookFigures {

    private static final double LARGE = 100;

    private final Words words;

    BookFigures(Words words) {
        this.words = words;
    }

    /** How many checks there are, and how many fail. */
    String summary(Book book) {
        long checks = book.cases().stream().mapToLong(c -> c.checks().size()).sum();
        long failed = book.cases().stream()
                .flatMap(c -> c.checks().stream())
                .filter(c -> !c.passed())
                .count();
        long failing = book.cases().stream().filter(c -> !c.passed()).count();
        long pairs = book.cases().stream()
                .mapToLong((CaseResult c) -> c.pairs().size())
                .sum();
        return words.say(
                "book.summary",
                String.valueOf(book.cases().size()),
                String.valueOf(checks),
                String.valueOf(failed),
                String.valueOf(failing),
                String.valueOf(pairs));
    }

    String figure(Statistics s) {
        return words.say("book.figure." + s.figure().key().replace(' ', '.'));
    }

    String basis(Statistics s) {
        return words.say("book.basis." + s.basis().toLowerCase(Locale.ROOT));
    }

    /** An error of a figure, per cent or degrees. */
    String error(Statistics s, double error, boolean signed) {
        String sign = signed ? "+" : "";
        return s.figure().isShare()
                ? String.format(Locale.ROOT, "%" + sign + ".1f %%", 100 * error)
                : String.format(Locale.ROOT, "%" + sign + ".2f\u00b0", error);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** Four figures or so; nothing for an open end. */
    static String number(double value) {
        if (Double.isInfinite(value)) {
            return "";
        }
        if (Double.isNaN(value)) {
            return "-";
        }
        String format = Math.abs(value) >= LARGE ? "%.0f" : Math.abs(value) >= 1 ? "%.2f" : "%.4f";
        return String.format(Locale.ROOT, format, value);
    }

    /** Between what and what an answer must lie. */
    String allowed(Check check) {
        if (Double.isInfinite(check.low())) {
            return words.say("book.allowed.most", number(check.high()));
        }
        if (Double.isInfinite(check.high())) {
            return words.say("book.allowed.least", number(check.low()));
        }
        return words.say("book.allowed", number(check.low()), number(check.high()));
    }
}
