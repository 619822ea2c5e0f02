package benchtwin.web;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Whether a request was meant for this machine. A page elsewhere could point a name of its own at this machine and then read the answers
 * as its own, so only names nobody else can own are answered: the loopback's, the very address a connection came in on, and names that
 * were given when the program was started.
 */
final class HostCheck {

    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Pattern PORT = Pattern.compile(":\\d{1,5}$");
    private static final Pattern IP_V4 = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}");
    private static final Pattern IP_V6 = Pattern.compile("\\[[0-9a-f:.]+(%[0-9a-z]+)?]");

    private final boolean network;
    private final Set<String> names;

    HostCheck(Access access) {
        network = access.isNetwork();
        names = access.names();
    }

    /**
     * Whether the name is one of ours.
     * @param header  the request's host header; null for none
     * @param arrived the address of this machine the connection came in on
     */
    boolean isOurs(String header, String arrived) {
        if (header == null) {
            return false;
        }
        String name = PORT.matcher(header.toLowerCase(Locale.ROOT)).replaceFirst("");
        return LOOPBACK.contains(name) || network && (names.contains(name) || isAddress(name, arrived));
    }

    /** Whether a connection comes from this very machine. */
    static boolean isLoopback(String address) {
        try {
            return InetAddress.getByName(bare(address)).isLoopbackAddress();
        } catch (UnknownHostException unknown) {
            return false;
        }
    }

    private static boolean isAddress(String name, String arrived) {
        if (!IP_V4.matcher(name).matches() && !IP_V6.matcher(name).matches()) {
            return false;   // a name would be looked up
        }
        try {
            return InetAddress.getByName(bare(name)).equals(InetAddress.getByName(bare(arrived)));
        } catch (UnknownHostException broken) {
            return false;
        }
    }

    private static String bare(String address) {
        return address.replaceAll("[\\[\\]]|%.*", "");
    }
}
