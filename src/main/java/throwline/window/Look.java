package throwline.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import java.awt.Toolkit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.swing.JComponent;
import javax.swing.UIManager;
import throwline.window.session.Settings;

/** Look of the window: light or dark as the system has it unless a person says otherwise, and how large. */
final class Look {

    /** Sizes that can be chosen, per cent. */
    static final List<Integer> SIZES = List.of(100, 125, 150, 175, 200, 225, 250);

    /** A system that does not answer for so long is taken as light, ms. */
    private static final long PATIENCE = 400;

    private final Settings settings;
    private boolean dark;

    Look(Settings settings) {
        this.settings = settings;
    }

    /** What a person has chosen: as the system, light or dark. */
    enum Choice {
        SYSTEM,
        LIGHT,
        DARK;

        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    Choice choice() {
        for (Choice each : Choice.values()) {
            if (each.key().equals(settings.get("look"))) {
                return each;
            }
        }
        return Choice.SYSTEM;
    }

    int size() {
        int size = settings.number("size", SIZES.get(0));
        return SIZES.contains(size) ? size : SIZES.get(0);
    }

    /** Puts it on; for windows that are open too. */
    void putOn() {
        dark = choice() == Choice.DARK || (choice() == Choice.SYSTEM && isSystemDark());
        UIScale.setSupportedZoomFactors(floats());
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIScale.setZoomFactor(size() / 100f);
        FlatLaf.updateUI();
    }

    private static float[] floats() {
        float[] factors = new float[SIZES.size()];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = SIZES.get(i) / 100f;
        }
        return factors;
    }

    void choose(Choice choice) {
        settings.put("look", choice.key());
        putOn();
    }

    void resize(int size) {
        settings.put("size", String.valueOf(size));
        putOn();
    }

    boolean isDark() {
        return dark;
    }

    /**
     * True where the system has changed between light and dark since the look was put on.
     *
     * @param systemIsDark as {@link #isSystemDark} found
     */
    boolean isOutOfDate(boolean systemIsDark) {
        return choice() == Choice.SYSTEM && systemIsDark != dark;
    }

    /** Letters that stand back. */
    static Color quiet() {
        return mix(UIManager.getColor("Label.foreground"), UIManager.getColor("Panel.background"), 0.35);
    }

    /** Letters that warn. */
    Color danger() {
        return dark ? new Color(0xFF9B8A) : new Color(0xB3261E);
    }

    /** What can be taken hold of. */
    Color grip() {
        return dark ? new Color(0x6CB6F0) : new Color(0x0072B2);
    }

    /** A surface that is up. */
    Color up() {
        return dark ? new Color(0xF0B84C) : new Color(0xE69F00);
    }

    static Color mix(Color a, Color b, double share) {
        return new Color(
                part(a.getRed(), b.getRed(), share),
                part(a.getGreen(), b.getGreen(), share),
                part(a.getBlue(), b.getBlue(), share));
    }

    private static int part(int a, int b, double share) {
        return (int) Math.round(a + share * (b - a));
    }

    static <C extends JComponent> C bold(C component) {
        component.setFont(component.getFont().deriveFont(Font.BOLD));
        return component;
    }

    /** What the system has; it may take a while to answer. */
    static boolean isSystemDark() {
        String theme = String.valueOf(System.getenv("GTK_THEME")).toLowerCase(Locale.ROOT);
        if (theme.endsWith("dark")) {
            return true;
        }
        Object desktop = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Net/ThemeName");
        if (desktop instanceof String name && name.toLowerCase(Locale.ROOT).endsWith("dark")) {
            return true;
        }
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            String key = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";
            return answer("reg", "query", key, "/v", "AppsUseLightTheme").contains("0x0");
        }
        return system.startsWith("mac")
                ? answer("defaults", "read", "-g", "AppleInterfaceStyle").contains("Dark")
                : answer("gsettings", "get", "org.gnome.desktop.interface", "color-scheme")
                        .contains("dark");
    }

    private static String answer(String... command) {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            Optional<Process> done =
                    process.waitFor(PATIENCE, TimeUnit.MILLISECONDS) ? Optional.of(process) : Optional.empty();
            if (done.isEmpty()) {
                process.destroy();
                return "";
            }
            return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
