package throwline.report;

import java.nio.charset.StandardCharsets;

/** A file to be written: its name and what is in it. */
public final class ReportFile {

    private final String name;
    private final byte[] content;

    /**
     * A file.
     *
     * @param name without a folder
     * @param content as it goes to the disk
     */
    public ReportFile(String name, byte[] content) {
        this.name = name;
        this.content = content.clone();
    }

    /** A file of text. */
    public static ReportFile of(String name, String text) {
        return new ReportFile(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same under another name. */
    public ReportFile named(String other) {
        return new ReportFile(other, content);
    }

    /** Its name, without a folder. */
    public String name() {
        return name;
    }

    /** What is in it. */
    public byte[] content() {
        return content.clone();
    }
}
