package throwline.window;

import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import throwline.window.session.Session;

/** Everything by the keyboard: the menus of the window. */
final class Menus {

    private final Desk desk;
    private final Program program;
    private final FileActions files;
    private final MainWindow window;
    private final int control = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();

    Menus(Desk desk, Program program, FileActions files, MainWindow window) {
        this.desk = desk;
        this.program = program;
        this.files = files;
        this.window = window;
    }

    JMenuBar bar() {
        JMenuBar bar = new JMenuBar();
        bar.add(file());
        bar.add(edit());
        bar.add(setUp());
        bar.add(view());
        return bar;
    }

    private JMenu file() {
        JMenu menu = menu("window.menu.file", 'F');
        item(menu, "window.file.new", KeyEvent.VK_N, control, files::newModel);
        item(menu, "window.file.open", KeyEvent.VK_O, control, files::open);
        item(menu, "window.file.example", 0, 0, files::openExample);
        menu.addSeparator();
        item(menu, "window.file.save", KeyEvent.VK_S, control, files::save);
        item(menu, "window.file.save-as", KeyEvent.VK_S, control | InputEvent.SHIFT_DOWN_MASK, files::saveAs);
        menu.addSeparator();
        item(menu, "window.flights.note", KeyEvent.VK_T, control, files::noteFlight);
        menu.addSeparator();
        item(menu, "window.file.end", KeyEvent.VK_Q, control, window::close);
        return menu;
    }

    private JMenu edit() {
        JMenu menu = menu("window.menu.edit", 'E');
        item(menu, "window.edit.undo", KeyEvent.VK_Z, control, () -> session(Session::undo));
        item(
                menu,
                "window.edit.redo",
                KeyEvent.VK_Z,
                control | InputEvent.SHIFT_DOWN_MASK,
                () -> session(Session::redo));
        return menu;
    }

    private JMenu setUp() {
        JMenu menu = menu("window.menu.set-up", 'S');
        item(menu, "window.list.add", 0, 0, () -> setUps(SetUpBar::add));
        item(menu, "window.list.copy", KeyEvent.VK_D, control, () -> setUps(SetUpBar::copy));
        item(menu, "window.list.rename", KeyEvent.VK_F2, 0, () -> setUps(SetUpBar::rename));
        item(menu, "window.list.remove", 0, 0, () -> session(s -> s.setUps().remove()));
        menu.addSeparator();
        int shifted = control | InputEvent.SHIFT_DOWN_MASK;
        item(
                menu,
                "window.list.up",
                KeyEvent.VK_UP,
                shifted,
                () -> session(s -> s.setUps().move(false)));
        item(
                menu,
                "window.list.down",
                KeyEvent.VK_DOWN,
                shifted,
                () -> session(s -> s.setUps().move(true)));
        menu.addSeparator();
        item(menu, "window.hand.back", KeyEvent.VK_B, control, () -> session(Session::backToBefore));
        item(menu, "window.hand.forget", KeyEvent.VK_L, control, () -> session(Session::forgetBefore));
        return menu;
    }

    private JMenu view() {
        JMenu menu = menu("window.menu.view", 'V');
        List<String> pages = MainWindow.PAGES;
        for (int i = 0; i < pages.size(); i++) {
            int page = i;
            JMenuItem item = new JMenuItem(desk.say("window.page." + pages.get(i)));
            item.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_1 + i, control));
            item.addActionListener(e -> window.go(page));
            menu.add(item);
        }
        menu.addSeparator();
        ButtonGroup looks = new ButtonGroup();
        for (Look.Choice choice : Look.Choice.values()) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(
                    desk.say("window.view.look." + choice.key()),
                    choice == desk.look().choice());
            item.addActionListener(e -> {
                desk.look().choose(choice);
                window.redraw();
            });
            looks.add(item);
            menu.add(item);
        }
        menu.addSeparator();
        ButtonGroup sizes = new ButtonGroup();
        for (int size : Look.SIZES) {
            JRadioButtonMenuItem item = new JRadioButtonMenuItem(
                    desk.say("window.view.size", size), size == desk.look().size());
            item.addActionListener(e -> {
                desk.look().resize(size);
                window.redraw();
            });
            sizes.add(item);
            menu.add(item);
        }
        return menu;
    }

    private JMenu menu(String key, char mnemonic) {
        JMenu menu = new JMenu(desk.say(key));
        menu.setMnemonic(mnemonic);
        return menu;
    }

    private void item(JMenu menu, String key, int code, int modifiers, Runnable action) {
        JMenuItem item = new JMenuItem(desk.say(key));
        if (code != 0) {
            item.setAccelerator(KeyStroke.getKeyStroke(code, modifiers));
        }
        item.addActionListener(e -> action.run());
        menu.add(item);
    }

    private void session(Consumer<Session> action) {
        program.session().ifPresent(action);
    }

    private void setUps(Consumer<SetUpBar> action) {
        window.handPage().map(HandPage::setUps).ifPresent(action);
    }
}
