package throwline.report.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.TooCloseToCall;
import throwline.study.Headline;
import throwline.study.SetUpResult;
import throwline.study.SetUpResult.RollRate;
import throwline.words.Words;

/** Says which set-ups a row cannot tell apart. */
final class CloseCalls {

    private final List<SetUpResult> setUps;
    private final Words words;

    CloseCalls(List<SetUpResult> setUps, Words words) {
        this.setUps = setUps;
        this.words = words;
    }

    /** One line for all rows that cannot tell the same set-ups apart; empty where all can be told apart. */
    String render(Page page) {
        Map<List<List<String>>, List<String>> rowsByGroups = new LinkedHashMap<>();
        rows().forEach((row, groups) -> {
            if (!groups.isEmpty()) {
                rowsByGroups.computeIfAbsent(groups, g -> new ArrayList<>()).add(row);
            }
        });
        StringBuilder text = new StringBuilder();
        rowsByGroups.forEach((groups, rows) -> text.append(Wrapped.paragraph(
                "  ", "    ", page.shown(String.join(", ", rows) + ": " + names(groups)), page.width())));
        return text.toString();
    }

    private Map<String, List<List<String>>> rows() {
        Map<String, List<List<String>>> rows = new LinkedHashMap<>();
        rows.put(words.say("row.stalls"), groups(SetUpResult::stallSpeed));
        rows.put(words.say("row.comein"), groups(SetUpResult::approachSpeed));
        rows.put(words.say("row.descent"), groups(SetUpResult::descentAngle));
        rows.put(words.say("row.sink"), groups(SetUpResult::sinkRate));
        rows.put(words.say("row.elevator"), groups(SetUpResult::elevator));
        rows.put(words.say("row.roundout"), groups(result -> result.field().flareHeight()));
        rows.put(words.say("row.floats"), groups(result -> result.field().floatDistance()));
        rows.put(words.say("row.bumps"), groups(result -> result.field().gustLimit()));
        rows.put(words.say("row.stops"), groups(result -> result.field().landing()));
        setUps.stream()
                .flatMap(result -> result.rollRates().stream())
                .map(RollRate::stick)
                .distinct()
                .forEach(stick -> rows.put(
                        words.say("row.roll.of", stick),
                        TooCloseToCall.groups(setUps.stream()
                                .flatMap(result -> result.rollRates().stream()
                                        .filter(roll -> roll.stick().equals(stick))
                                        .flatMap(roll -> entry(result, roll.rate()).stream()))
                                .toList())));
        return rows;
    }

    private List<List<String>> groups(Function<SetUpResult, Headline> number) {
        return TooCloseToCall.groups(setUps.stream()
                .flatMap(result -> entry(result, number.apply(result)).stream())
                .toList());
    }

    private static Optional<TooCloseToCall.Entry> entry(SetUpResult result, Headline number) {
        return Headlines.known(number)
                .map(known -> new TooCloseToCall.Entry(result.setUp().name(), known));
    }

    private String names(List<List<String>> groups) {
        if (groups.get(0).size() == setUps.size()) {
            return words.say("row.close.all");
        }
        return groups.stream().map(this::and).collect(Collectors.joining("; ")) + ".";
    }

    private String and(List<String> names) {
        String last = names.get(names.size() - 1);
        return words.say("row.and", String.join(", ", names.subList(0, names.size() - 1)), last);
    }
}
