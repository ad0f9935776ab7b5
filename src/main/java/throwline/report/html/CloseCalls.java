package throwline.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import throwline.report.Headlines;
import throwline.report.TooCloseToCall;
import throwline.study.Headline;
import throwline.words.Words;

/** Sentences about numbers that cannot be told apart. */
final class CloseCalls {

    private final Words words;

    CloseCalls(Words words) {
        this.words = words;
    }

    /**
     * Which set-ups of one pack cannot be told apart.
     *
     * @param who the pack; empty where there is one only
     * @param groups names that belong together
     * @param all how many set-ups there are
     */
    Optional<String> inside(String who, List<List<String>> groups, int all) {
        if (groups.isEmpty()) {
            return Optional.empty();
        }
        String names = groups.get(0).size() == all
                ? words.say("row.all-setups")
                : groups.stream().map(this::and).collect(Collectors.joining("; "));
        return Optional.of(who.isEmpty() ? words.say("page.close", names) : words.say("page.close.with", who, names));
    }

    /**
     * In which set-ups of the same name two packs or models cannot be told apart.
     *
     * @param sameModel true for two packs of one model, whose numbers share errors
     */
    Optional<String> between(
            String one,
            List<TooCloseToCall.Entry> first,
            String other,
            List<TooCloseToCall.Entry> second,
            boolean sameModel) {
        List<String> close = new ArrayList<>();
        int shared = 0;
        for (TooCloseToCall.Entry a : first) {
            for (TooCloseToCall.Entry b : second) {
                if (a.name().equals(b.name())) {
                    shared++;
                    if (Headlines.tooClose(own(a.value(), sameModel), own(b.value(), sameModel))) {
                        close.add(a.name());
                    }
                }
            }
        }
        if (close.isEmpty()) {
            return Optional.empty();
        }
        String where = close.size() == shared ? words.say("page.close.everywhere") : and(close);
        return Optional.of(words.say("page.close.between", one, other, where));
    }

    private static Headline.Known own(Headline.Known known, boolean sameModel) {
        return sameModel ? known : new Headline.Known(known.value(), known.low(), known.high(), known.basis());
    }

    /** Names as a sentence lists them. */
    String and(List<String> names) {
        if (names.size() == 1) {
            return names.get(0);
        }
        String last = names.get(names.size() - 1);
        return words.say("row.and", String.join(", ", names.subList(0, names.size() - 1)), last);
    }
}
