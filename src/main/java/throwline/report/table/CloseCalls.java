package throwline.report.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import throwline.report.Headlines;
import throwline.report.Page;
import throwline.report.TooCloseToCall;
import throwline.study.FlightQuantity;
import throwline.study.HeadlineNumbers;
import throwline.study.SetUpResult;
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
        Map<String, List<TooCloseToCall.Entry>> rows = new LinkedHashMap<>();
        for (FlightQuantity quantity : FlightQuantity.on(FlightQuantity.Screen.CLOSE_CALLS)) {
            for (SetUpResult result : setUps) {
                for (HeadlineNumbers.Entry entry : result.headlines().of(quantity)) {
                    Headlines.known(entry.number())
                            .ifPresent(known -> rows.computeIfAbsent(label(entry), row -> new ArrayList<>())
                                    .add(new TooCloseToCall.Entry(result.setUp().name(), known)));
                }
            }
        }
        Map<String, List<List<String>>> groups = new LinkedHashMap<>();
        rows.forEach((row, entries) -> groups.put(row, TooCloseToCall.groups(entries)));
        return groups;
    }

    private String label(HeadlineNumbers.Entry entry) {
        String row = entry.quantity().row();
        return entry.stick().isEmpty() ? words.say(row) : words.say(row + ".of", entry.stick());
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
