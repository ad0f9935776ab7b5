package throwline.window;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A component that draws itself and has a name for those who cannot see it. */
abstract class Drawn extends JComponent {

    private static final long serialVersionUID = 1;

    private final transient AccessibleRole role;

    /**
     * @param role what it is
     */
    Drawn(AccessibleRole role) {
        this.role = role;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return role;
                }
            };
        }
        return accessibleContext;
    }
}
