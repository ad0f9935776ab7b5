package throwline.window;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** A file that is dropped on the window. */
final class FileDrop extends TransferHandler {

    private static final long serialVersionUID = 1;

    private final transient Consumer<Path> opener;

    /**
     * @param opener takes the first of the files that are dropped, once the drop is over
     */
    FileDrop(Consumer<Path> opener) {
        this.opener = opener;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            Object dropped = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            if (dropped instanceof List<?> files && !files.isEmpty() && files.get(0) instanceof File file) {
                SwingUtilities.invokeLater(() -> opener.accept(file.toPath()));
                return true;
            }
            return false;
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
    }
}
