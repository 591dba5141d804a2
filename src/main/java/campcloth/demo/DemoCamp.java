package campcloth.demo;

import campcloth.cloth.Cloth;
import campcloth.cloth.Swatch;
import campcloth.event.Event;
import java.util.List;

/**
 * What the demo consists of; all of it invented.
 *
 * @param event its event
 * @param cloths its cloths
 */
public record DemoCamp(Event event, List<DemoCloth> cloths) {

    public DemoCamp {
        cloths = List.copyOf(cloths);
    }

    /**
     * A cloth of the demo.
     *
     * @param key how the demo knows it; its address is made when it is put in
     * @param cloth the cloth as told
     * @param swatches what was measured on it, in the order it was told
     */
    public record DemoCloth(String key, Cloth cloth, List<Swatch> swatches) {

        public DemoCloth {
            swatches = List.copyOf(swatches);
        }
    }
}
