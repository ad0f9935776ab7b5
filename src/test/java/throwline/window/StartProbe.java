package throwline.window;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import throwline.window.session.Disk;

/**
 * How long a start takes, from the begin of the process to painted numbers: {@code window}, or {@code empty} for a process that shows an
 * empty window of the same look. Tells wall time and processor time, ms, and ends. Run as a program of its own, since a
 * start is the start of a process.
 */
final class StartProbe {

    private StartProbe() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments[0].equals("empty")) {
            SwingUtilities.invokeLater(StartProbe::empty);
        } else {
            Path folder = Files.createTempDirectory("start");
            Disk disk = new Disk();
            Desk desk = Screen.desk(folder, disk);
            SwingUtilities.invokeLater(() -> {
                Program program = new Program(desk, disk, folder, Optional.empty(), () -> {});
                program.window().onShown(view -> SwingUtilities.invokeLater(StartProbe::told));
                program.start();
            });
        }
        Thread.sleep(120_000);
    }

    private static void empty() {
        FlatLightLaf.setup();
        JFrame frame = new JFrame("empty");
        frame.setContentPane(new javax.swing.JPanel(new BorderLayout()));
        frame.getContentPane().add(new JLabel("empty"));
        frame.setSize(new Dimension(1280, 800));
        frame.setLocationRelativeTo(null);
        frame.setVisible(true);
        SwingUtilities.invokeLater(() -> SwingUtilities.invokeLater(StartProbe::told));
    }

    private static void told() {
        long begun = ManagementFactory.getRuntimeMXBean().getStartTime();
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        System.out.printf(
                "%d ms, of a processor %d ms%n",
                System.currentTimeMillis() - begun, system.getProcessCpuTime() / 1_000_000);
        Runtime.getRuntime().halt(0);
    }
}
