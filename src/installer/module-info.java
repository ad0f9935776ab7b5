/** The program as one module, so that a trimmed Java can hold it and its class archive works in any folder. */
open module throwline {
    exports throwline.app;

    requires java.desktop;
    requires java.logging;
    requires jdk.unsupported;

    uses com.formdev.flatlaf.FlatDefaultsAddon;
    uses org.apache.commons.logging.LogFactory;
}
