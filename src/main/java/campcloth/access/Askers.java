package campcloth.access;

import java.util.function.Supplier;

/** Tells who asks at the moment, on each thread by itself. */
public final class Askers {

    private final Asker otherwise;
    private final ThreadLocal<Asker> now;

    /** @param otherwise who asks where nobody was named: {@link Asker#LOCAL} without accounts, else {@link Asker#STRANGER} */
    public Askers(Asker otherwise) {
        this.otherwise = otherwise;
        this.now = ThreadLocal.withInitial(() -> otherwise);
    }

    public Asker now() {
        return now.get();
    }

    /** Does some work for an asker; afterwards the one before asks again. */
    public <T> T as(Asker asker, Supplier<T> work) {
        Asker before = now.get();
        now.set(asker);
        try {
            return work.get();
        } finally {
            if (before.equals(otherwise)) {
                now.remove();
            } else {
                now.set(before);
            }
        }
    }
}
