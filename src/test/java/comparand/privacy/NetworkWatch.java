package comparand.privacy;

import java.io.FileDescriptor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.NetPermission;
import java.net.SocketPermission;
import java.net.URLPermission;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.Permission;

/**
 * Stands in a Java of its own ({@code -Djava.security.manager=comparand.privacy.NetworkWatch}), and refuses and notes every
 * try to open a socket of any kind, to find the address of a host by its name, and to start another program. Java asks it
 * before it does so; what code outside of Java does (the drawing of letters, say) it does not see.
 *
 * <p>{@code -Dcomparand.watch=FILE}: where a line is written for each.
 */
@SuppressWarnings("removal")
public final class NetworkWatch extends SecurityManager {

    private final Path notes = Path.of(System.getProperty("comparand.watch"));

    @Override
    public void checkPermission(Permission permission) {
        boolean net = permission instanceof SocketPermission
                || permission instanceof URLPermission
                || (permission instanceof NetPermission && permission.getName().contains("accessUnixDomainSocket"));
        if (net) {
            refuse(permission.toString());
        }
    }

    @Override
    public void checkPermission(Permission permission, Object context) {
        checkPermission(permission);
    }

    /**
     * Both to connect, and with the port -1 to find an address by a name. Names are let pass where no name has an address
     * ({@code comparand.app.Offline}): Java's fonts ask for that of this machine, and nobody is asked on.
     */
    @Override
    public void checkConnect(String host, int port) {
        if (port != -1) {
            refuse("connect " + host + " " + port);
        } else if (!"".equals(System.getProperty("jdk.net.hosts.file"))) {
            refuse("resolve " + host);
        }
    }

    @Override
    public void checkConnect(String host, int port, Object context) {
        checkConnect(host, port);
    }

    @Override
    public void checkListen(int port) {
        refuse("listen " + port);
    }

    @Override
    public void checkAccept(String host, int port) {
        refuse("accept " + host + " " + port);
    }

    @Override
    public void checkMulticast(InetAddress address) {
        refuse("multicast " + address);
    }

    @Override
    public void checkExec(String command) {
        refuse("start " + command);
    }

    // of everything else nothing is to be said, and it is asked often

    @Override
    public void checkRead(FileDescriptor descriptor) {}

    @Override
    public void checkWrite(FileDescriptor descriptor) {}

    @Override
    public void checkPropertyAccess(String key) {}

    @Override
    public void checkRead(String file) {}

    @Override
    public void checkPackageAccess(String name) {}

    /** The nearest code that is not Java's own. */
    private static String caller() {
        return StackWalker.getInstance()
                .walk(frames -> frames.filter(f -> !f.getClassName().matches("(java|jdk|sun|javax|com\\.sun)\\..*")
                                && !f.getClassName().equals(NetworkWatch.class.getName()))
                        .limit(3)
                        .map(Object::toString)
                        .toList())
                .toString();
    }

    private void refuse(String what) {
        try {
            Files.writeString(
                    notes, what + " from " + caller() + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        throw new SecurityException(what);
    }
}
