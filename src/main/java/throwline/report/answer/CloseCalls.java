package throwline.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import throwline.report.TooCloseToCall;
import throwline.report.document.Block.Paragraph;
import throwline.report.document.Text;
import throwline.report.document.Text.Join;
import throwline.study.Headline;

/** Sentences about numbers that cannot be told apart. */
final class CloseCalls {

    private CloseCalls() {}

    /**
     * A row of numbers of one group.
     *
     * @param label its name
     * @param entries its known numbers
     */
    record Strip(Text label, List<TooCloseToCall.Entry> entries) {
        List<List<String>> groups() {
            return TooCloseToCall.groups(entries);
        }
    }

    /** One sentence for all rows that cannot tell the same set-ups apart. */
    static List<Paragraph> sentences(List<Strip> rows, int setUps) {
        Map<List<List<String>>, List<Text>> byGroups = new LinkedHashMap<>();
        for (Strip row : rows) {
            if (!row.groups().isEmpty()) {
                byGroups.computeIfAbsent(row.groups(), groups -> new ArrayList<>())
                        .add(row.label());
            }
        }
        List<Paragraph> said = new ArrayList<>();
        byGroups.forEach((groups, labels) ->
                said.add(Paragraph.say("row.close", Text.join(Join.COMMA, labels), names(groups, setUps))));
        return said;
    }

    private static Text names(List<List<String>> groups, int setUps) {
        return groups.get(0).size() == setUps
                ? Text.say("row.all-setups")
                : Text.join(Join.SEMICOLON, groups, Text::names);
    }

    /** Which set-ups of one group a row cannot tell apart. */
    static Optional<Text> inside(Text who, Strip row, int setUps) {
        if (row.groups().isEmpty()) {
            return Optional.empty();
        }
        Text names = names(row.groups(), setUps);
        return Optional.of(who.isEmpty() ? Text.say("page.close", names) : Text.say("page.close.with", who, names));
    }

    /** In which set-ups of the same name a row cannot tell two packs or models apart. */
    static Optional<Text> between(Flown one, Strip first, Flown other, Strip second) {
        boolean sameModel = one.model().equals(other.model());
        List<String> close = new ArrayList<>();
        int shared = 0;
        for (TooCloseToCall.Entry a : first.entries()) {
            for (TooCloseToCall.Entry b : second.entries()) {
                if (a.name().equals(b.name())) {
                    shared++;
                    if (own(a.value(), sameModel).tooCloseTo(own(b.value(), sameModel))) {
                        close.add(a.name());
                    }
                }
            }
        }
        if (close.isEmpty()) {
            return Optional.empty();
        }
        Text where = close.size() == shared ? Text.say("page.close.everywhere") : Text.names(close);
        return Optional.of(Text.say("page.close.between", one.who(), other.who(), where));
    }

    /** Packs of one model share errors, models do not. */
    private static Headline.Known own(Headline.Known known, boolean sameModel) {
        return sameModel ? known : new Headline.Known(known.value(), known.low(), known.high(), known.basis());
    }
}
