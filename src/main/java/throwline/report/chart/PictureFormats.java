package throwline.report.chart;

/** Formats in which the files of a chart are written. */
public enum PictureFormats {
    /** Pixels, for any programme. */
    PNG,
    /** The same, and lines and letters that stay sharp at any size. */
    PNG_AND_SVG
}
