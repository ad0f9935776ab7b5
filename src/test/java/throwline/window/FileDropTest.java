package throwline.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler.TransferSupport;
import org.junit.jupiter.api.Test;

/** A model file that is dropped on the window opens; other things do not. */
class FileDropTest {

    private final List<Path> opened = new ArrayList<>();
    private final FileDrop drop = new FileDrop(opened::add);

    private record Files(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files;
        }
    }

    private static TransferSupport of(Transferable dropped) {
        return new TransferSupport(new JPanel(), dropped);
    }

    @Test
    void the_first_file_opens() throws Exception {
        TransferSupport dropped = of(new Files(List.of(new File("heron.yaml"), new File("other.yaml"))));
        assertThat(drop.canImport(dropped)).isTrue();
        assertThat(drop.importData(dropped)).isTrue();
        SwingUtilities.invokeAndWait(() -> {});
        assertThat(opened).containsExactly(Path.of("heron.yaml"));
    }

    @Test
    void letters_and_nothing_do_not() {
        assertThat(drop.canImport(of(new StringSelection("heron.yaml")))).isFalse();
        assertThat(drop.importData(of(new StringSelection("heron.yaml")))).isFalse();
        assertThat(drop.importData(of(new Files(List.of())))).isFalse();
        assertThat(opened).isEmpty();
    }
}
