package benchtwin.cli;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Optional;

/** What this machine is called on its networks. */
final class OwnAddresses {

    private OwnAddresses() {
    }

    /** Its addresses that other machines can reach, as far as the system says; the short kind, which a person can type. */
    static List<String> shortOnes() {
        try {
            return NetworkInterface.networkInterfaces().filter(OwnAddresses::isUp).flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress()).map(InetAddress::getHostAddress)
                .sorted().toList();
        } catch (SocketException unknown) {
            return List.of();
        }
    }

    /** Its own name, if it has one. */
    static Optional<String> name() {
        try {
            String name = InetAddress.getLocalHost().getHostName();
            return name.equals("localhost") || name.matches("[\\d.:]+") ? Optional.empty() : Optional.of(name);
        } catch (UnknownHostException none) {
            return Optional.empty();
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback();
        } catch (SocketException unknown) {
            return false;
        }
    }
}
