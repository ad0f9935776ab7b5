package throwline.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import throwline.section.Airfoil;
import throwline.section.PolarRun;

/** Names sources by letters and lists them below a table. */
final class SourceList {

    private final List<String> sources = new ArrayList<>();

    /** The letters of an airfoil's sources, new ones added to the list. */
    String letters(Airfoil airfoil) {
        TreeSet<Character> letters = new TreeSet<>();
        for (PolarRun run : airfoil.runs()) {
            String work = work(run.source());
            if (!sources.contains(work)) {
                sources.add(work);
            }
            letters.add((char) ('a' + sources.indexOf(work)));
        }
        StringBuilder text = new StringBuilder();
        letters.forEach(text::append);
        return text.toString();
    }

    /** The work that was cited, without figure and name of the section. */
    private static String work(String source) {
        return source.split(";|, figure |(?<=, \\d{4}): ", 2)[0].strip();
    }

    /** One line a letter. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            lines.add((char) ('a' + i) + ": " + sources.get(i));
        }
        return lines;
    }
}
