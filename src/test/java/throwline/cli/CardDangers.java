package throwline.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import throwline.study.Danger;
import throwline.words.Words;

/** What a field card says of dangers, read back from its page: their order, and which set-up it lands with first. */
final class CardDangers {

    private static final Words WORDS = Words.load();
    private static final Pattern WARNING =
            Pattern.compile("<li class=\"danger\"><strong>([^<]*)</strong> ([^<]*)</li>");
    private static final Pattern LANDING = Pattern.compile("(?:First|Last of all, a) landing with ([^:,<]+)[:,]");

    private final List<Warning> warnings;
    private final String card;

    CardDangers(String card) {
        this.card = card.replace("&#39;", "'").replace("&quot;", "\"").replace("&amp;", "&");
        warnings = WARNING.matcher(this.card)
                .results()
                .map(warning -> warning.group(1) + " " + warning.group(2))
                .map(Warning::of)
                .toList();
    }

    /**
     * A line of warning.
     *
     * @param about whom
     * @param dangers in the order in which they are told
     */
    private record Warning(String about, List<Danger> dangers) {
        static Warning of(String line) {
            String said = line.toLowerCase(Locale.ROOT);
            List<Danger> told = Arrays.stream(Danger.values())
                    .filter(danger -> said.contains(sentence(danger)))
                    .sorted((a, b) -> said.indexOf(sentence(a)) - said.indexOf(sentence(b)))
                    .toList();
            return new Warning(line.replaceFirst(":.*", "").toLowerCase(Locale.ROOT), told);
        }

        boolean isAbout(String name) {
            return about.contains(name) || about.contains("every set-up");
        }
    }

    private static String sentence(Danger danger) {
        return WORDS.say("danger." + danger.key()).toLowerCase(Locale.ROOT);
    }

    /** How many warnings there are. */
    int count() {
        return warnings.size();
    }

    /** What breaks the rules: the worst first, each warning a danger, and no landing with a set-up that is ruled out. */
    List<String> broken() {
        List<String> broken = new ArrayList<>();
        List<Danger> worst = new ArrayList<>();
        for (Warning warning : warnings) {
            if (warning.dangers().isEmpty() || !isSorted(warning.dangers())) {
                broken.add("dangers out of order: " + warning);
            } else {
                worst.add(warning.dangers().get(0));
            }
        }
        if (!isSorted(worst)) {
            broken.add("warnings out of order: " + warnings);
        }
        LANDING.matcher(card)
                .results()
                .map(found -> found.group(1).toLowerCase(Locale.ROOT))
                .forEach(name -> {
                    if (warnings.stream()
                            .filter(warning -> warning.isAbout(name))
                            .flatMap(warning -> warning.dangers().stream())
                            .anyMatch(danger -> danger.rulesOut(Danger.Use.LANDING))) {
                        broken.add("a landing with " + name + " against " + warnings);
                    }
                });
        return broken;
    }

    private static boolean isSorted(List<Danger> dangers) {
        return IntStream.range(1, dangers.size())
                .allMatch(i -> dangers.get(i - 1).compareTo(dangers.get(i)) <= 0);
    }
}
