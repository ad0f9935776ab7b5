package throwline.report.chart;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * An image as a PNG file (ISO/IEC 15948): eight bits a colour, no filter. Charts are mostly white, so that filters gain
 * nothing; leaving them out takes a fifth of the time that the writer of the Java library takes.
 */
final class PngFile {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int BITS = 8;
    private static final int RED_GREEN_BLUE = 2;
    private static final int QUICK = 3;
    private static final int BUFFER = 1 << 16;

    private PngFile() {}

    /** Painter of a part of an image. */
    @FunctionalInterface
    interface Part {

        /**
         * So many lines of the image as an opaque image of that height whose pixels are integers
         * ({@link BufferedImage#TYPE_INT_RGB}); used up before the next part is asked for.
         */
        BufferedImage paint(int from, int lines);
    }

    /**
     * The file of an image that is painted part by part, from the top.
     *
     * @param width pixels
     * @param height pixels
     * @param most lines of a part
     * @param part its painter
     */
    static byte[] of(int width, int height, int most, Part part) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(BUFFER);
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(width, height));
            chunk(out, "IDAT", pixels(width, height, most, part));
            chunk(out, "IEND", new byte[0]);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] header(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(width);
        out.writeInt(height);
        out.write(new byte[] {BITS, RED_GREEN_BLUE, 0, 0, 0});
        return bytes.toByteArray();
    }

    private static byte[] pixels(int width, int height, int most, Part part) throws IOException {
        int[] colours = new int[width];
        byte[] line = new byte[1 + 3 * width];
        Deflater deflater = new Deflater(QUICK);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(BUFFER);
        try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, BUFFER)) {
            for (int from = 0; from < height; from += most) {
                int lines = Math.min(most, height - from);
                Raster raster = part.paint(from, lines).getRaster();
                for (int y = 0; y < lines; y++) {
                    raster.getDataElements(0, y, width, 1, colours);
                    fill(line, colours);
                    out.write(line);
                }
            }
        } finally {
            deflater.end();
        }
        return bytes.toByteArray();
    }

    private static void fill(byte[] line, int[] colours) {
        int k = 1;
        for (int colour : colours) {
            line[k++] = (byte) (colour >> 16);
            line[k++] = (byte) (colour >> 8);
            line[k++] = (byte) colour;
        }
    }

    private static void chunk(DataOutputStream out, String type, byte[] content) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(content);
        out.writeInt(content.length);
        out.write(name);
        out.write(content);
        out.writeInt((int) check.getValue());
    }
}
