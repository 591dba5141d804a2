package campcloth.demo;

import campcloth.demo.DemoThing.Standing;
import java.util.List;

/** The demo among what is kept. Each method is one unit of work. What somebody changed is theirs: it is never removed or replaced. */
public interface Demo {

    /** Everything that the demo ever put in, its event first; empty where it never put in anything. */
    List<DemoThing> things();

    /** Removes what stands as it was put in; answers with everything as it stands then. */
    List<DemoThing> remove();

    /** Puts in what is not there; answers with everything as it stands then. */
    List<DemoThing> bringBack();

    /** Whether anything of these stands as the demo put it in. */
    static boolean isThere(List<DemoThing> things) {
        return things.stream().anyMatch(thing -> thing.standing() == Standing.AS_PUT_IN);
    }
}
