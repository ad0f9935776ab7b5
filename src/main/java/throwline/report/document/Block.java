package throwline.report.document;

import java.util.List;

/** A part of a document. */
public sealed interface Block
        permits Block.Section, Block.Paragraph, Block.Pictures, Block.Checks, Block.Enclosed, Table, Comparison {

    /** How soon a reader needs a section. */
    enum Depth {
        /** Shown at once. */
        ESSENTIAL,
        /** Folded until it is asked for. */
        DETAIL
    }

    /** Where a section is shown. */
    enum Medium {
        /** Everywhere. */
        ANY,
        /** Only where text is read line by line. */
        TERMINAL,
        /** Only on a page, which can draw. */
        PAGE
    }

    /**
     * A section.
     *
     * @param heading its heading; may be empty
     * @param role HEADLINE for what a reader must take away, CAUTION for a caution that may not be overlooked
     * @param depth how soon it is needed
     * @param medium where it is shown
     * @param blocks what stands in it
     */
    record Section(Text heading, Role role, Depth depth, Medium medium, List<Block> blocks) implements Block {
        public Section {
            blocks = List.copyOf(blocks);
        }

        /** A plain section that is shown at once, everywhere. */
        public static Section of(Text heading, List<? extends Block> blocks) {
            return new Section(heading, Role.PLAIN, Depth.ESSENTIAL, Medium.ANY, List.copyOf(blocks));
        }

        /** A section of this role. */
        public Section as(Role other) {
            return new Section(heading, other, depth, medium, blocks);
        }

        /** The same, folded until it is asked for. */
        public Section folded() {
            return new Section(heading, role, Depth.DETAIL, medium, blocks);
        }

        /** The same, shown only there. */
        public Section on(Medium other) {
            return new Section(heading, role, depth, other, blocks);
        }
    }

    /**
     * One or more sentences.
     *
     * @param role what they are for
     * @param lead their beginning, which stands out; may be empty
     * @param text what follows
     */
    record Paragraph(Role role, Text lead, Text text) implements Block {
        /** Plain sentences. */
        public static Paragraph of(Text text) {
            return new Paragraph(Role.PLAIN, Text.none(), text);
        }

        /** Sentences of this role. */
        public static Paragraph of(Role role, Text text) {
            return new Paragraph(role, Text.none(), text);
        }

        /** A sentence of the file of words. */
        public static Paragraph say(String key, Object... arguments) {
            return of(Text.say(key, arguments));
        }
    }

    /**
     * Pictures, drawn only where they are shown.
     *
     * @param source draws them
     */
    record Pictures(Source source) implements Block {
        /** Draws pictures. */
        @FunctionalInterface
        public interface Source {
            /** The pictures, in order. */
            List<PagePicture> draw();
        }
    }

    /** Things to do one after the other, each with a box to tick. */
    record Checks(List<Text> items) implements Block {
        public Checks {
            items = List.copyOf(items);
        }
    }

    /**
     * A file that comes with the document, to be read and to be saved.
     *
     * @param name of the file
     * @param content what is in it
     */
    record Enclosed(String name, String content) implements Block {}
}
