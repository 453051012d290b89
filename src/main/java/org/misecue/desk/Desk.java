package org.misecue.desk;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.util.JavalinBindException;
import java.net.InetAddress;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.misecue.desk.begin.Begin;
import org.misecue.desk.bowls.BowlsStation;
import org.misecue.desk.check.CheckStation;
import org.misecue.desk.common.Assets;
import org.misecue.desk.common.Closing;
import org.misecue.desk.common.Faults;
import org.misecue.desk.common.FirstPage;
import org.misecue.desk.common.GuestDoor;
import org.misecue.desk.common.Pulse;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;
import org.misecue.desk.day.DayStation;
import org.misecue.desk.door.Door;
import org.misecue.desk.door.Keys;
import org.misecue.desk.find.ArchivePage;
import org.misecue.desk.find.FindPage;
import org.misecue.desk.media.CuttingBoard;
import org.misecue.desk.media.Films;
import org.misecue.desk.text.TextStation;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** An open desk. It serves this machine, and the local network only where that was wished. */
public final class Desk implements AutoCloseable {

    private static final String HERE = "127.0.0.1";

    /** Plain forms are small; what is dropped onto the page is streamed and has its own limit. */
    private static final long MOST_FORM_BYTES = 256 * 1024;

    /** Most of them wait for a film that is watched or for somebody slow; waiting costs little. */
    private static final int MOST_THREADS = 200;

    private static final int IDLE_MILLIS = 30_000;

    /** Whoever sends slower than this, in bytes a second, holds a place that somebody else could use. */
    private static final int LEAST_RATE = 200;

    private final Javalin server;
    private final Keys keys;
    private final List<InetAddress> around;
    private final CountDownLatch finished;

    private Desk(Javalin server, Keys keys, List<InetAddress> around, CountDownLatch finished) {
        this.server = server;
        this.keys = keys;
        this.around = around;
        this.finished = finished;
    }

    /** @throws BadInput if the port is taken */
    public static Desk open(DeskSettings settings) {
        Keys keys = new Keys(settings.code());
        List<InetAddress> around = settings.lan() ? LocalNetwork.addresses() : List.of();
        Javalin server = Javalin.create(Desk::configure);
        CountDownLatch finished = new CountDownLatch(1);
        Desk desk = new Desk(server, keys, around, finished);
        Door door = new Door(keys, desk::names);
        door.guard(server);
        Counter counter = new Counter(settings.folder(), settings.home(), settings.language());
        stations(door, settings, finished).forEach(station -> station.open(server, counter));
        try {
            server.start(settings.lan() ? "0.0.0.0" : HERE, settings.port());
        } catch (JavalinBindException e) {
            throw new BadInput(
                    Place.of("--port"),
                    "port " + settings.port() + " is taken; name another, or 0 for any that is free.",
                    e);
        }
        if (settings.lan()) {
            keys.invite();
        }
        return desk;
    }

    private static List<Station> stations(Door door, DeskSettings settings, CountDownLatch finished) {
        return List.of(
                new Faults(),
                new Assets(),
                new GuestDoor(door, settings.lan()),
                new FirstPage(),
                new Closing(finished::countDown),
                new Pulse(),
                new BowlsStation(settings.clock()),
                new DayStation(settings.clock()),
                new Films(),
                new CuttingBoard(),
                new FindPage(),
                new ArchivePage(),
                new CheckStation(settings.clock()),
                new TextStation(settings.clock()),
                new Begin());
    }

    private static void configure(JavalinConfig config) {
        config.showJavalinBanner = false;
        config.http.maxRequestSize = MOST_FORM_BYTES;
        config.http.prefer405over404 = true;
        config.jetty.threadPool = threads();
        config.jetty.modifyHttpConfiguration(Desk::bound);
        // What is confirmed is on the disk; nobody has to be waited for.
        config.jetty.modifyServer(server -> server.setStopTimeout(0));
    }

    private static QueuedThreadPool threads() {
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS, 4, IDLE_MILLIS);
        threads.setName("desk");
        threads.setDaemon(true);
        return threads;
    }

    private static void bound(HttpConfiguration http) {
        http.setIdleTimeout(IDLE_MILLIS);
        http.setMinRequestDataRate(LEAST_RATE);
        http.setSendServerVersion(false);
        http.setSendDateHeader(true);
    }

    /** The names that this desk goes by, with its port. */
    private Set<String> names() {
        Set<String> names = new LinkedHashSet<>(List.of(HERE + ":" + port(), "localhost:" + port(), "[::1]:" + port()));
        around.forEach(address -> names.add(address.getHostAddress() + ":" + port()));
        return names;
    }

    public int port() {
        return server.port();
    }

    /** Where it can be opened on this machine, with the key. */
    public String address() {
        return "http://" + HERE + ":" + port() + "/?key=" + keys.owner();
    }

    /** Where devices of the local network ask to come in; none unless that was wished. */
    public List<String> guestAddresses() {
        return around.stream()
                .map(address -> "http://" + address.getHostAddress() + ":" + port() + "/join")
                .toList();
    }

    /** Waits until somebody wants it closed: on a page, or by stopping the program. */
    public void untilFinished() {
        Runtime.getRuntime().addShutdownHook(new Thread(finished::countDown));
        try {
            finished.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        server.stop();
    }
}
