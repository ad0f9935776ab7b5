package throwline.cli;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the jar, or the module of an installed program, was built as. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .or(() -> Optional.ofNullable(Version.class.getModule().getDescriptor())
                        .flatMap(ModuleDescriptor::rawVersion))
                .orElse("(not built)");
        return new String[] {"throwline " + version};
    }
}
