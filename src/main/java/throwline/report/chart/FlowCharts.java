package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import throwline.report.ReportFile;
import throwline.study.OutlineAir;
import throwline.study.SectionFlow;
import throwline.words.Words;

/** Charts of the air along outlines. */
public final class FlowCharts {

    private static final int LONGEST = 40;

    private final Words words;

    /** Charts with these words. */
    public FlowCharts(Words words) {
        this.words = words;
    }

    /** A file or two for each airfoil of a model that the section method is meant for. */
    public List<ReportFile> draw(List<OutlineAir> outlines, PictureFormats formats) {
        List<Picture> pictures = new ArrayList<>();
        for (OutlineAir air : outlines) {
            picture(
                            "air-" + (pictures.size() + 1) + "-" + plain(air.airfoil()),
                            air.airfoil(),
                            air.reynolds(),
                            0,
                            air.flows())
                    .ifPresent(pictures::add);
        }
        return PictureFiles.ofReady(pictures, formats);
    }

    /** Letters of a file's name without its folder that every disk takes. */
    private static String plain(String airfoil) {
        String name = airfoil.replaceAll("^.*[/\\\\]", "").replaceAll("[^A-Za-z0-9._-]+", "-");
        return name.substring(0, Math.min(LONGEST, name.length()));
    }

    /**
     * The picture of one airfoil; empty without flows.
     *
     * @param name of the picture
     * @param airfoil its name
     * @param reynolds Reynolds number on the chord
     * @param flap deflection, rad, trailing edge down positive
     * @param flows air along its outline
     */
    Optional<Picture> picture(String name, String airfoil, double reynolds, double flap, List<SectionFlow> flows) {
        String holdsFor = words.say("chart.flow.for", number(reynolds), angle(flap));
        return flows.isEmpty()
                ? Optional.empty()
                : Optional.of(new FlowChart(airfoil, holdsFor, flows, words).draw(name));
    }

    static String number(double reynolds) {
        return String.format(Locale.ROOT, "%,.0f", reynolds).replace(',', ' ');
    }

    String angle(double flap) {
        String degrees = String.format(Locale.ROOT, "%.0f\u00b0", Math.abs(Math.toDegrees(flap)));
        return degrees.equals("0\u00b0") ? degrees : words.say(flap < 0 ? "row.up" : "row.down", degrees);
    }
}
