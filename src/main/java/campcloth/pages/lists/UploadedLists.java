package campcloth.pages.lists;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.figure.Refused;
import campcloth.pages.NotHere;
import campcloth.supply.ListDesk;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReport;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists.OnBadRow;
import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Lists that were sent by forms, until they are taken over: at most {@value #MOST} of them, on disk, each under an id that cannot
 * be guessed and for half an hour after somebody last asked for it. Where there are too many, the one that waited longest goes. One
 * is worked on at a time, a few wait.
 */
@Component
class UploadedLists {

    static final int MOST = 8;

    /** Lists that wait for their turn; less than are kept, so that there is always one that may go. */
    static final int MOST_WAITING = 4;

    static final Duration KEPT = Duration.ofMinutes(30);

    private static final Logger LOG = LoggerFactory.getLogger(UploadedLists.class);
    private static final int ID_BYTES = 18;
    private static final long PATIENCE_SECONDS = 5;

    private final ListDesk desk;
    private final Askers askers;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, UploadedList> lists = new LinkedHashMap<>();
    private final ThreadPoolExecutor work;
    private final ScheduledExecutorService broom;

    UploadedLists(ListDesk desk, Askers askers, Clock clock) {
        this.desk = desk;
        this.askers = askers;
        this.clock = clock;
        this.work = new ThreadPoolExecutor(
                1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(MOST_WAITING), task -> daemon(task, "lists"));
        this.broom = Executors.newSingleThreadScheduledExecutor(task -> daemon(task, "lists-expiry"));
        broom.scheduleWithFixedDelay(this::sweep, 1, 1, TimeUnit.MINUTES);
    }

    /** As many lists wait as may. */
    static final class Full extends Exception {

        private static final long serialVersionUID = 1L;
    }

    /** Takes a list in and has it looked at. The spool is the list's from now on, whatever comes of it. */
    UploadedList add(String fileName, ListOrder order, OnBadRow onBadRow, Spool bytes) throws Full {
        UploadedList list = new UploadedList(newId(), fileName, order, onBadRow, bytes, clock.instant());
        synchronized (lists) {
            sweep();
            makeRoom();
            lists.put(list.id(), list);
        }
        try {
            work.execute(workFor(askers.now(), list, true));
        } catch (RejectedExecutionException full) {
            synchronized (lists) {
                drop(list);
            }
            throw new Full();
        }
        return list;
    }

    /** The list of that id; what has gone is not there. */
    UploadedList named(String id) {
        synchronized (lists) {
            UploadedList list = lists.get(id);
            if (list == null || isOver(list)) {
                throw new NotHere("list");
            }
            list.touch(clock.instant());
            return list;
        }
    }

    /** Has a list taken over that was looked at, or whose work was cut short; does nothing to any other. */
    void take(UploadedList list) throws Full {
        synchronized (lists) {
            UploadedList.Stage before = list.stage();
            if (!(before instanceof UploadedList.Stage.LookedAt) && !(before instanceof UploadedList.Stage.Broken)) {
                return;
            }
            list.stage(new UploadedList.Stage.Working(false));
            try {
                work.execute(workFor(askers.now(), list, false));
            } catch (RejectedExecutionException full) {
                list.stage(before);
                throw new Full();
            }
        }
    }

    /** Gives a list up that nobody works on. */
    void forget(UploadedList list) {
        synchronized (lists) {
            if (!list.isWorking()) {
                drop(list);
            }
        }
    }

    /** How many are kept. */
    int size() {
        synchronized (lists) {
            return lists.size();
        }
    }

    /** What is done later is done for whoever sent it. */
    private Runnable workFor(Asker asker, UploadedList list, boolean dryRun) {
        return () -> askers.as(asker, () -> worked(list, dryRun));
    }

    private UploadedList.Stage worked(UploadedList list, boolean dryRun) {
        list.begin();
        UploadedList.Stage end = end(list, dryRun);
        if (end instanceof UploadedList.Stage.Ended || end instanceof UploadedList.Stage.Unreadable) {
            close(list);
        }
        list.touch(clock.instant());
        list.stage(end);
        return end;
    }

    private UploadedList.Stage end(UploadedList list, boolean dryRun) {
        try {
            ListReport report = desk.take(list.order(), list.onBadRow(), dryRun, list.bytes(), list);
            return dryRun ? new UploadedList.Stage.LookedAt(report) : new UploadedList.Stage.Ended(report);
        } catch (Refused refused) {
            return new UploadedList.Stage.Unreadable(refused.refusals());
        } catch (IOException | RuntimeException broken) {
            LOG.warn("A list was not taken over", broken);
            return new UploadedList.Stage.Broken();
        }
    }

    private boolean isOver(UploadedList list) {
        return !list.isWorking() && list.touched().plus(KEPT).isBefore(clock.instant());
    }

    void sweep() {
        synchronized (lists) {
            List<UploadedList> over =
                    lists.values().stream().filter(this::isOver).toList();
            over.forEach(this::drop);
        }
    }

    private void makeRoom() {
        List<UploadedList> idle = new ArrayList<>(
                lists.values().stream().filter(list -> !list.isWorking()).toList());
        idle.sort(Comparator.comparing(UploadedList::touched));
        for (int i = 0; i < idle.size() && lists.size() >= MOST; i++) {
            drop(idle.get(i));
        }
    }

    private void drop(UploadedList list) {
        lists.remove(list.id());
        close(list);
    }

    private static void close(UploadedList list) {
        try {
            list.bytes().close();
        } catch (IOException broken) {
            LOG.warn("The file of a list could not be given up: {}", broken.getMessage());
        }
    }

    private String newId() {
        byte[] id = new byte[ID_BYTES];
        random.nextBytes(id);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(id);
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }

    /** A list that is being written is given up: it is all of it or nothing. */
    @PreDestroy
    void end() throws InterruptedException {
        broom.shutdownNow();
        work.shutdownNow();
        if (!work.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            LOG.warn("A list is still being worked on");
        }
        synchronized (lists) {
            List.copyOf(lists.values()).forEach(this::drop);
        }
    }
}
