package benchtwin.cli;

import benchtwin.bench.BuildIdentity;
import picocli.CommandLine.IVersionProvider;

/** Version and build identity for {@code --version}. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"benchtwin " + BuildIdentity.text()};
    }
}
