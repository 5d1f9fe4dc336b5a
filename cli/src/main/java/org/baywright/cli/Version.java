package org.baywright.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version, from the jar's manifest. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("(not packaged)");
        return new String[] {"baywright " + version};
    }
}
