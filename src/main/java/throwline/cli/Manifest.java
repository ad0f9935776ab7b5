package throwline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.report.ReportFile;

/**
 * The files written to a folder: the SHA-256 of each by its name, kept in a text file beside them. Only a text file
 * whose first line says that it is such a list counts as one.
 */
record Manifest(String heading, Map<String, String> hashes) {

    static final String NAME = "throwline-files.txt";

    /** Larger than the list of any folder of ours, bytes. */
    private static final int LARGEST = 1_000_000;

    private static final Pattern LINE = Pattern.compile("(?<hash>[0-9a-f]{64})  (?<name>[^/\\\\\0]{3,200})");

    /**
     * A list.
     *
     * @param heading what its first line says, without the number sign
     */
    Manifest {
        hashes = Map.copyOf(hashes);
    }

    /** The list in a file; empty where the file is missing or is no such list. */
    static Manifest read(Path file, String heading) throws IOException {
        Map<String, String> hashes = new LinkedHashMap<>();
        String text = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? beginning(file) : "";
        if (text.startsWith(firstLine(heading))) {
            text.lines()
                    .map(LINE::matcher)
                    .filter(Matcher::matches)
                    .forEach(m -> hashes.put(m.group("name"), m.group("hash")));
        }
        return new Manifest(heading, hashes);
    }

    /** True for a file that was written as such a list, perhaps not to its end. */
    static boolean isList(Path file, String heading) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        String text = beginning(file);
        return text.startsWith(firstLine(heading)) || firstLine(heading).startsWith(text);
    }

    /** True where this file is as it was written. */
    boolean holds(Path file) throws IOException {
        String hash = hashes.get(String.valueOf(file.getFileName()));
        return hash != null && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && hash.equals(hash(file));
    }

    /** This and a file. */
    Manifest with(ReportFile file) {
        return with(file.name(), HexFormat.of().formatHex(digest().digest(file.content())));
    }

    /** This and whatever another list holds of a folder as it stands there. */
    Manifest with(Manifest other, Path folder) throws IOException {
        Manifest more = this;
        for (Map.Entry<String, String> entry : other.hashes.entrySet()) {
            if (other.holds(folder.resolve(entry.getKey()))) {
                more = more.with(entry.getKey(), entry.getValue());
            }
        }
        return more;
    }

    /** As it stands in the folder, below a line that says what it is. */
    String text() {
        StringBuilder text = new StringBuilder(firstLine(heading));
        new TreeMap<>(hashes)
                .forEach((name, hash) ->
                        text.append(hash).append("  ").append(name).append('\n'));
        return text.toString();
    }

    private Manifest with(String name, String hash) {
        Map<String, String> more = new LinkedHashMap<>(hashes);
        more.put(name, hash);
        return new Manifest(heading, more);
    }

    private static String firstLine(String heading) {
        return "# " + heading + '\n';
    }

    private static String beginning(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return new String(in.readNBytes(LARGEST), StandardCharsets.UTF_8);
        }
    }

    private static String hash(Path file) throws IOException {
        MessageDigest digest = digest();
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            in.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), digest));
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
