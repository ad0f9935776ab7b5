package throwline.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import throwline.report.ReportFile;

/** Files of pictures, drawn on all processors: no two pictures share anything that changes. */
final class PictureFiles {

    private PictureFiles() {}

    /**
     * The files of all pictures, in their order.
     *
     * @throws throwline.report.NoFontException where the machine has no font
     */
    static List<ReportFile> of(List<Supplier<Picture>> pictures, PictureFormats formats) {
        Drawing.requireFont();
        int hands = Math.max(1, Math.min(pictures.size(), Runtime.getRuntime().availableProcessors()));
        List<List<List<ReportFile>>> byHand = IntStream.range(0, hands)
                .parallel()
                .mapToObj(hand -> everySoMany(pictures, formats, hand, hands))
                .toList();
        return IntStream.range(0, pictures.size())
                .mapToObj(i -> byHand.get(i % hands).get(i / hands))
                .flatMap(List::stream)
                .toList();
    }

    /** The files of pictures that are drawn out already. */
    static List<ReportFile> ofReady(List<Picture> pictures, PictureFormats formats) {
        return of(
                pictures.stream()
                        .<Supplier<Picture>>map(picture -> () -> picture)
                        .toList(),
                formats);
    }

    /** The files of every so many of the pictures, on one canvas. */
    private static List<List<ReportFile>> everySoMany(
            List<Supplier<Picture>> pictures, PictureFormats formats, int first, int step) {
        Canvas canvas = new Canvas();
        List<List<ReportFile>> drawn = new ArrayList<>();
        for (int i = first; i < pictures.size(); i += step) {
            Picture picture = pictures.get(i).get();
            Drawing drawing = new Drawing(picture);
            List<ReportFile> files = new ArrayList<>();
            files.add(new ReportFile(picture.name() + ".png", drawing.png(canvas)));
            if (formats == PictureFormats.PNG_AND_SVG) {
                files.add(new ReportFile(picture.name() + ".svg", drawing.svg()));
            }
            drawn.add(files);
        }
        return drawn;
    }
}
