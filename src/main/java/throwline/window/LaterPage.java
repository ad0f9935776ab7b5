package throwline.window;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A page that is made when it is first looked at, so that the window is there sooner. */
final class LaterPage implements WindowPage {

    private final String key;
    private final Supplier<WindowPage> maker;
    private final JPanel place = new JPanel(new BorderLayout());
    private Optional<WindowPage> made = Optional.empty();

    /**
     * @param key of the page
     * @param maker makes it
     */
    LaterPage(String key, Supplier<WindowPage> maker) {
        this.key = key;
        this.maker = maker;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public void changed() {
        made.ifPresent(WindowPage::changed);
    }

    @Override
    public void show(HandView view) {
        made.ifPresent(page -> page.show(view));
    }

    @Override
    public void close() {
        made.ifPresent(WindowPage::close);
    }

    @Override
    public void entered() {
        if (made.isEmpty()) {
            WindowPage page = maker.get();
            made = Optional.of(page);
            place.add(page.component());
            place.revalidate();
        }
        made.ifPresent(WindowPage::entered);
    }
}
