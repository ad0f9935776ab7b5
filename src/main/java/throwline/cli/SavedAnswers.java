package throwline.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Answers of an interview that was not finished, in a hidden file beside the file that they are for. A file of that
 * name that begins otherwise is not ours: it is neither read nor touched.
 */
final class SavedAnswers {

    private static final int MOST_BYTES = 65536;

    private final Path place;
    private final String header;

    /** Interviews whose answers are kept. */
    enum Of {
        MODEL("# Answers to throwline new so far"),
        FLIGHTS("# Answers to throwline learn so far");

        private final String header;

        Of(String header) {
            this.header = header;
        }
    }

    /**
     * The answers kept for a file.
     *
     * @param file that is being made or added to
     * @param of the interview
     */
    SavedAnswers(Path file, Of of) {
        place = file.resolveSibling("." + file.getFileName() + ".answers");
        header = of.header;
    }

    /** The answers by question, in their order; none where nothing was kept. */
    Map<String, String> read() {
        Map<String, String> answers = new LinkedHashMap<>();
        for (String line : lines()) {
            int colon = line.indexOf(": ");
            if (!line.startsWith("#") && colon > 0) {
                answers.put(line.substring(0, colon), line.substring(colon + 2));
            }
        }
        return answers;
    }

    /**
     * Keeps these answers.
     *
     * @return whether they are kept: not where the folder cannot be written to, or another's file is in the place
     */
    boolean keep(Map<String, String> answers) {
        StringBuilder text = new StringBuilder(header).append('\n');
        answers.forEach((id, said) -> text.append(id).append(": ").append(said).append('\n'));
        try {
            if (Files.exists(place, LinkOption.NOFOLLOW_LINKS) && lines().isEmpty()) {
                return false;
            }
            Path part = Files.createTempFile(folder(), ".throwline-new", ".part");
            try {
                Files.writeString(part, text, StandardCharsets.UTF_8);
                Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** Drops what was kept. */
    void drop() {
        try {
            if (!lines().isEmpty()) {
                Files.deleteIfExists(place);
            }
        } catch (IOException e) {
            // Answers that stay are offered again, which does no harm.
            return;
        }
    }

    private Path folder() {
        Path parent = place.getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** The lines of the file; none where it is not ours. */
    private List<String> lines() {
        try {
            if (!Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS) || Files.size(place) > MOST_BYTES) {
                return List.of();
            }
            List<String> lines = Files.readAllLines(place, StandardCharsets.UTF_8);
            return !lines.isEmpty() && lines.get(0).equals(header) ? lines : List.of();
        } catch (IOException e) {
            return List.of();
        }
    }
}
