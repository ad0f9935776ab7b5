package throwline.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the jar was built as. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("(not built)");
        return new String[] {"throwline " + version};
    }
}
