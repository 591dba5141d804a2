package campcloth.outage;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntSupplier;

/** A line between two programs of this machine that can be cut, muted and mended: what a cable, a switch or a firewall does. */
public final class CutLine implements AutoCloseable {

    private enum State {
        WHOLE,
        CUT,
        MUTE
    }

    private static final long MUTE_POLL_MILLIS = 20;

    private final ServerSocket door;
    private final IntSupplier target;
    private final Set<Closeable> open = ConcurrentHashMap.newKeySet();
    private volatile State state = State.WHOLE;

    /** @param target the port behind it, asked for at each connection, since a program that is started again may have another */
    public CutLine(IntSupplier target) throws IOException {
        this.target = target;
        this.door = new ServerSocket(0, 100, InetAddress.getLoopbackAddress());
        daemon(this::accept, "line");
    }

    public int port() {
        return door.getLocalPort();
    }

    /** All connections break, and no new one comes about. */
    public void cut() {
        state = State.CUT;
        drop();
    }

    /** Nothing comes through any more, and nobody is told. */
    public void mute() {
        state = State.MUTE;
    }

    public void mend() {
        if (state == State.MUTE) {
            drop();
        }
        state = State.WHOLE;
    }

    /** All connections break; new ones come about. */
    public void drop() {
        open.removeIf(socket -> {
            closed(socket);
            return true;
        });
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket near = door.accept();
                daemon(() -> join(near), "line-join");
            } catch (IOException over) {
                // closed: the loop ends
            }
        }
    }

    private void join(Socket near) {
        open.add(near);
        try {
            while (state == State.MUTE) {
                Thread.sleep(MUTE_POLL_MILLIS);
            }
            if (state == State.CUT) {
                closed(near);
                return;
            }
            Socket far = new Socket(InetAddress.getLoopbackAddress(), target.getAsInt());
            open.add(far);
            daemon(() -> carry(near, far), "line-there");
            daemon(() -> carry(far, near), "line-back");
        } catch (IOException nobodyThere) {
            closed(near);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void carry(Socket from, Socket to) {
        byte[] some = new byte[8192];
        try {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            int length = in.read(some);
            while (length >= 0) {
                while (state == State.MUTE) {
                    Thread.sleep(MUTE_POLL_MILLIS);
                }
                out.write(some, 0, length);
                length = in.read(some);
            }
        } catch (IOException broken) {
            // told to the other side below
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } finally {
            closed(from);
            closed(to);
            open.remove(from);
            open.remove(to);
        }
    }

    private static void closed(Closeable socket) {
        try {
            socket.close();
        } catch (IOException already) {
            // it is closed, which is what was wanted
        }
    }

    private static void daemon(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        door.close();
        drop();
    }
}
