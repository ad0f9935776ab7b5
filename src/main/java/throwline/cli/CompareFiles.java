package throwline.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import throwline.input.ReadModel;
import throwline.report.CompareAnswer;
import throwline.report.ReportFile;
import throwline.report.chart.Charts;
import throwline.report.chart.PictureFormats;
import throwline.study.Comparison.PackResult;
import throwline.units.Unit;
import throwline.words.Words;

/** The files that a comparison fills a folder with: the charts of every pack. */
final class CompareFiles {

    /** Names that a pack's number may get; a pack that is called so itself goes by its number too. */
    private static final Pattern NUMBERED = Pattern.compile("(pack\\d+)?");

    /** Letters of a name that go into the name of a file; most disks take 255 for all of it. */
    private static final int LONGEST = 60;

    private final Charts charts;
    private final PictureFormats formats;

    /**
     * @param words the sentences
     * @param besideSpeed what stands beside a speed in m/s
     * @param formats of the charts
     */
    CompareFiles(Words words, Unit besideSpeed, PictureFormats formats) {
        this.formats = formats;
        this.charts = new Charts(words, besideSpeed);
    }

    /** The files of one model; where it has several packs, the charts of each carry its name. */
    List<ReportFile> of(CompareAnswer answer) {
        List<ReportFile> files = new ArrayList<>();
        List<PackResult> packs = answer.comparison().packs();
        for (int i = 0; i < packs.size(); i++) {
            String prefix = packs.size() == 1 ? "" : prefix(packs, i);
            for (ReportFile chart : charts.draw(answer.comparison(), packs.get(i), formats)) {
                files.add(chart.named(prefix + chart.name()));
            }
        }
        return files;
    }

    /** A pack's name in letters that every disk takes; its number where that does not tell it from the others. */
    private static String prefix(List<PackResult> packs, int index) {
        String name = plain(packs.get(index).pack().name());
        boolean own = packs.stream()
                        .filter(pack -> plain(pack.pack().name()).equals(name))
                        .count()
                == 1;
        return (own && !NUMBERED.matcher(name).matches() ? name : "pack" + (index + 1)) + "-";
    }

    /** The name of a model file without its folder; standard input is named after the model. */
    static String fileName(String model, ReadModel.Project project) {
        Path name =
                ModelReader.STANDARD_INPUT.equals(model) ? null : Path.of(model).getFileName();
        return name == null ? plain(project.model().name()) + ".yaml" : name.toString();
    }

    /** Lower case letters and digits, hyphens for the rest, the first 60 of them. */
    static String plain(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return plain.substring(0, Math.min(LONGEST, plain.length())).replaceAll("^-|-$", "");
    }
}
