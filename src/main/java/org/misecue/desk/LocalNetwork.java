package org.misecue.desk;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;

/** What this machine is called by others in the same house. */
final class LocalNetwork {

    private LocalNetwork() {}

    /** Addresses that lead nowhere beyond the local network, by RFC 1918 and RFC 3927. */
    static List<InetAddress> addresses() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(Inet4Address.class::isInstance)
                    .filter(address -> address.isSiteLocalAddress() || address.isLinkLocalAddress())
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }
}
