package throwline.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.OptionalInt;
import throwline.words.Message;

/** Gets text out of a file: its size, its encoding, what cannot be text. */
final class SourceText {

    /** A model file has some 3 kB. */
    static final int LARGEST = 512 * 1024;

    private static final int BEGINNING = 512;
    private static final int SEVERAL = 3;

    private static final FilePlace WHOLE = new FilePlace(0, 0);

    private SourceText() {}

    static String read(Path file) throws UnreadableFile {
        if (leadsNowhere(file)) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.link"));
        }
        if (Files.isDirectory(file)) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.folder"));
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.special"));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in);
        } catch (NoSuchFileException e) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.missing"));
        } catch (AccessDeniedException e) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.denied"));
        } catch (IOException e) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.io"));
        }
    }

    /** True for a path through a link whose target is missing, or that leads in a circle. */
    private static boolean leadsNowhere(Path file) {
        for (Path part = file; part != null; part = part.getParent()) {
            if (Files.isSymbolicLink(part) && !Files.exists(part)) {
                return true;
            }
        }
        return false;
    }

    static String read(InputStream in) throws UnreadableFile, IOException {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            throw new UnreadableFile(WHOLE, Message.of("input.file.large", LARGEST / 1024 + " kB"));
        }
        return decode(bytes);
    }

    static String decode(byte[] bytes) throws UnreadableFile {
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            throw new UnreadableFile(FilePlace.START, Message.of("input.file.utf16"));
        }
        int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer left = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer decoded = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(left, decoded, true);
        String text = decoded.flip().toString();
        if (isBinary(bytes)) {
            throw new UnreadableFile(FilePlace.START, Message.of("input.file.binary"));
        }
        OptionalInt odd = OddCharacter.in(text);
        if (odd.isPresent()) {
            throw new UnreadableFile(placeAt(text, odd.getAsInt()), Message.of("input.file.control"));
        }
        if (result.isError()) {
            throw new UnreadableFile(placeAt(text, text.length()), Message.of("input.file.encoding"));
        }
        if (text.isBlank()) {
            throw new UnreadableFile(FilePlace.START, Message.of("input.file.empty"));
        }
        return text;
    }

    private static boolean startsWith(byte[] bytes, int... signature) {
        if (bytes.length < signature.length) {
            return false;
        }
        for (int i = 0; i < signature.length; i++) {
            if ((bytes[i] & 0xFF) != signature[i]) {
                return false;
            }
        }
        return true;
    }

    /** Pictures, archives and the like hold several control characters near their beginning. */
    private static boolean isBinary(byte[] bytes) {
        int odd = 0;
        for (int i = 0; i < Math.min(bytes.length, BEGINNING); i++) {
            odd += bytes[i] >= 0 && OddCharacter.is(bytes[i]) ? 1 : 0;
        }
        return odd >= SEVERAL;
    }

    private static FilePlace placeAt(String text, int index) {
        String before = text.substring(0, index);
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        return new FilePlace(line, index - before.lastIndexOf('\n'));
    }
}
