package benchtwin.bench;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** Which benchtwin this is: its version and the build it came from, printed beside every result. */
public final class BuildIdentity {

    private static final String RESOURCE = "/benchtwin/build.properties";

    private BuildIdentity() {
    }

    /**
     * Version and build.
     * @return for instance {@code 0.1.0 (de924f8)}; the version alone where the build is not known
     */
    public static String text() {
        Properties properties = new Properties();
        try (InputStream in = BuildIdentity.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                return "development";
            }
            properties.load(in);
        } catch (IOException unreadable) {
            return "development";
        }
        String version = properties.getProperty("git.build.version", "development");
        String commit = properties.getProperty("git.commit.id.abbrev", "");
        boolean changed = Boolean.parseBoolean(properties.getProperty("git.dirty", "false"));
        return commit.isEmpty() ? version : "%s (%s%s)".formatted(version, commit, changed ? ", changed" : "");
    }
}
