package throwline.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.CRC32;
import throwline.notes.LogSource;
import throwline.words.Message;

/** Reads a log: cells under a header with the columns that the notes name, NMEA 0183, IGC or GPX 1.1. */
public final class LogFile {

    /** An hour at ten rows a second has some 4 MB. */
    static final int LARGEST = 16 * 1024 * 1024;

    private LogFile() {}

    /**
     * Reads a log. Never throws for anything that a file may hold.
     *
     * @param file the file
     * @param source what the notes say of it
     * @return the log, or all problems
     */
    public static ReadLog read(Path file, LogSource source) {
        try {
            byte[] bytes = bytes(file);
            return read(SourceText.decode(bytes), file.toString(), source, sum(bytes));
        } catch (UnreadableFile e) {
            return new ReadLog.Faulty(List.of(e.problem(file.toString())));
        }
    }

    /** The text of a log; refused before it is read where it is too large. */
    static byte[] bytes(Path file) throws UnreadableFile {
        FilePlace whole = new FilePlace(0, 0);
        if (Files.isDirectory(file)) {
            throw new UnreadableFile(whole, Message.of("input.file.folder"));
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new UnreadableFile(whole, Message.of("input.file.special"));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = Files.size(file) > LARGEST ? new byte[LARGEST + 1] : in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new UnreadableFile(whole, Message.of("input.log.large", LARGEST / 1024 / 1024 + " MB"));
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw new UnreadableFile(whole, Message.of("input.file.missing"));
        } catch (IOException e) {
            throw new UnreadableFile(whole, Message.of("input.file.io"));
        }
    }

    private static long sum(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return sum.getValue() ^ ((long) bytes.length << 32);
    }

    /** Reads the text of a log. */
    static ReadLog read(String text, String shownAs, LogSource source, long sum) {
        Problems problems = new Problems(shownAs);
        LogRows rows = new LogRows(source, problems);
        switch (LogFormat.of(source.file())) {
            case NMEA -> new NmeaSentences(rows, problems).read(text);
            case IGC -> new IgcRecords(rows, problems).read(text);
            case GPX -> new GpxTrack(rows, problems).read(text);
            case CELLS -> new LogCells(source, rows, problems).read(text);
        }
        if (problems.isEmpty() && rows.isEmpty()) {
            problems.add(new FilePlace(0, 0), "", Message.of("input.log.nothing"));
        }
        return problems.isEmpty() ? new ReadLog.Log(rows.log(), sum) : new ReadLog.Faulty(problems.list());
    }
}
