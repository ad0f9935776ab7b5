package throwline.report.html;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import throwline.report.document.PagePicture;
import throwline.words.Words;

/** A part of a page. All text is escaped where it is shown; only drawings are taken as they are. */
public sealed interface Part {

    /** Its heading; empty where it has none. */
    String heading();

    /**
     * What a reader must take away, first on the page.
     *
     * @param sentences one a line
     */
    record Verdict(String heading, List<Said> sentences) implements Part {
        public Verdict {
            sentences = List.copyOf(sentences);
        }

        /** Sentences that begin with what they are about, up to their first colon or else their first full stop. */
        static Verdict of(String heading, List<String> sentences) {
            return new Verdict(heading, sentences.stream().map(Said::of).toList());
        }
    }

    /**
     * A sentence in two pieces, the first of which stands out.
     *
     * @param about its beginning
     * @param rest what follows
     */
    record Said(String about, String rest) {
        static Said of(String text) {
            String sentence = Unbroken.of(text);
            int colon = sentence.indexOf(':');
            int end = colon >= 0 ? colon + 1 : sentence.indexOf('.') + 1;
            return new Said(sentence.substring(0, end), sentence.substring(end));
        }
    }

    /**
     * Sentences in a list.
     *
     * @param sentences one a line
     */
    record Sentences(String heading, List<String> sentences) implements Part {
        public Sentences {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * Numbers side by side, a card a row of the table.
     *
     * @param intro what holds for all; may be empty
     */
    record Cards(String heading, String intro, List<Card> cards) implements Part {
        public Cards {
            cards = List.copyOf(cards);
        }
    }

    /**
     * A plain table.
     *
     * @param headers one a column
     * @param rows cells as many as headers
     */
    record Table(String heading, List<String> headers, List<List<String>> rows) implements Part {
        public Table {
            headers = List.copyOf(headers);
            rows = List.copyOf(rows);
        }
    }

    /**
     * Pictures.
     *
     * @param intro what holds for all of them
     */
    record Pictures(String heading, String intro, List<PagePicture> pictures) implements Part {
        public Pictures {
            pictures = List.copyOf(pictures);
        }

        /** Pictures, with the lines that all of them share said once. */
        static Pictures of(String heading, List<PagePicture> pictures) {
            if (pictures.size() < 2) {
                return new Pictures(heading, "", pictures);
            }
            List<String> shared = pictures.get(0).caption().stream()
                    .filter(line -> pictures.stream()
                            .allMatch(picture -> picture.caption().contains(line)))
                    .toList();
            String proof = pictures.get(0).proof();
            boolean oneProof =
                    pictures.stream().allMatch(picture -> picture.proof().equals(proof));
            List<PagePicture> rest = pictures.stream()
                    .map(picture -> picture.without(shared, oneProof))
                    .toList();
            String intro = String.join(" ", shared) + (oneProof ? " " + proof : "");
            return new Pictures(heading, intro.strip(), rest);
        }
    }

    /** Parts below a line that opens them. */
    record Folded(String heading, List<Part> parts) implements Part {
        public Folded {
            parts = List.copyOf(parts);
        }
    }

    /**
     * What must not be overlooked.
     *
     * @param sentences one a paragraph
     */
    record Caution(String heading, List<String> sentences) implements Part {
        public Caution {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * A file inside the page, to be read and to be saved.
     *
     * @param intro what it is and how to save it
     * @param save what the link says
     * @param name of the file
     * @param text what is in it
     */
    record Enclosed(String heading, String intro, String save, String name, String text) implements Part {

        /** A model file. */
        static Enclosed of(Words words, String name, String text) {
            return new Enclosed(
                    words.say("page.file", name),
                    words.say("page.file.intro"),
                    words.say("page.file.save", name),
                    name,
                    text);
        }

        /** The file as an address that holds it. */
        public String address() {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            return "data:application/octet-stream;base64," + Base64.getEncoder().encodeToString(bytes);
        }
    }
}
