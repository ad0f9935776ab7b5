package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import throwline.report.ReportFile;

/** Draws pictures as SVG and PNG files, on all processors: no two pictures share anything that changes. */
final class PictureFiles {

    private PictureFiles() {}

    /**
     * The files of all pictures, in their order.
     *
     * @throws throwline.report.NoFontException where the machine has no font
     */
    static List<ReportFile> of(List<Supplier<Picture>> pictures) {
        Drawing.requireFont();
        int hands = Math.max(1, Math.min(pictures.size(), Runtime.getRuntime().availableProcessors()));
        List<List<ReportFile>> byHand = IntStream.range(0, hands)
                .parallel()
                .mapToObj(hand -> everySoMany(pictures, hand, hands))
                .toList();
        List<ReportFile> files = new ArrayList<>();
        for (int i = 0; i < pictures.size(); i++) {
            List<ReportFile> drawn = byHand.get(i % hands);
            files.addAll(drawn.subList(2 * (i / hands), 2 * (i / hands) + 2));
        }
        return files;
    }

    /** The files of pictures that are drawn out already. */
    static List<ReportFile> ofReady(List<Picture> pictures) {
        return of(pictures.stream()
                .<Supplier<Picture>>map(picture -> () -> picture)
                .toList());
    }

    private static List<ReportFile> everySoMany(List<Supplier<Picture>> pictures, int first, int step) {
        Canvas canvas = new Canvas();
        List<ReportFile> files = new ArrayList<>();
        for (int i = first; i < pictures.size(); i += step) {
            Picture picture = pictures.get(i).get();
            Drawing drawing = new Drawing(picture);
            files.add(new ReportFile(picture.name() + ".svg", drawing.svg()));
            files.add(new ReportFile(picture.name() + ".png", drawing.png(canvas)));
        }
        return files;
    }
}
