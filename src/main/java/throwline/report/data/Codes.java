package throwline.report.data;

import java.util.Locale;

/** Constants as programs read them: lower case, hyphens between words. */
final class Codes {

    private Codes() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
