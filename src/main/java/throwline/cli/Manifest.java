package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import throwline.report.ReportFile;

/** What was written to a folder: the SHA-256 of each file by its name, kept in a text file beside them. */
record Manifest(Map<String, String> hashes) {

    static final String NAME = "throwline-files.txt";

    private static final Pattern LINE = Pattern.compile("(?<hash>[0-9a-f]{64})  (?<name>.+)");

    Manifest {
        hashes = Map.copyOf(hashes);
    }

    /** The manifest of a folder; empty where there is none. */
    static Manifest read(Path folder) throws IOException {
        Map<String, String> hashes = new LinkedHashMap<>();
        Path file = folder.resolve(NAME);
        if (Files.isRegularFile(file)) {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            text.lines()
                    .map(LINE::matcher)
                    .filter(Matcher::matches)
                    .forEach(m -> hashes.put(m.group("name"), m.group("hash")));
        }
        return new Manifest(hashes);
    }

    /** True where this file is as it was written. */
    boolean holds(Path file) throws IOException {
        String hash = hashes.get(String.valueOf(file.getFileName()));
        return hash != null
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && hash.equals(hash(Files.readAllBytes(file)));
    }

    /** This and a file. */
    Manifest with(ReportFile file) {
        Map<String, String> more = new LinkedHashMap<>(hashes);
        more.put(file.name(), hash(file.content()));
        return new Manifest(more);
    }

    /** As it stands in the folder, below a line that says what it is. */
    String text(String heading) {
        StringBuilder text = new StringBuilder("# ").append(heading).append('\n');
        new TreeMap<>(hashes)
                .forEach((name, hash) ->
                        text.append(hash).append("  ").append(name).append('\n'));
        return text.toString();
    }

    private static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
