package throwline.report.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import throwline.report.sheet.SheetDocument.Block;
import throwline.report.sheet.SheetDocument.Paragraph;
import throwline.study.SetUpResult;
import throwline.words.Words;

/** What a card says before all else about a model that does not hold its nose by itself, or hardly does. */
final class BalanceWarning {

    private static final String UNSTABLE = "unstable";

    private final List<SetUpResult> setUps;
    private final Words words;

    BalanceWarning(List<SetUpResult> setUps, Words words) {
        this.setUps = setUps;
        this.words = words;
    }

    /** True where some set-up must not be flown. */
    boolean forbids() {
        return !named(UNSTABLE).isEmpty();
    }

    List<Block> blocks() {
        return Stream.of(UNSTABLE, "hardly-stable")
                .filter(how -> !named(how).isEmpty())
                .<Block>map(how -> new Paragraph(words.say("sheet.caution." + how, named(how)), true))
                .toList();
    }

    private String named(String how) {
        return setUps.stream()
                .filter(result -> result.isNoted("note." + how))
                .map(result -> result.setUp().name())
                .collect(Collectors.joining(", "));
    }
}
