package campcloth.errand;

import campcloth.advice.Verdict;
import campcloth.event.EventDates;
import java.util.List;
import java.util.Optional;

/**
 * All that goes along to the shop, to the table and to the event for one errand: what to heed first, what to buy, what to have
 * at hand, what to do before cutting, how it is sewn, what the event's rules say and what is still to ask. It advises and
 * certifies nothing; event, venue and law win.
 *
 * @param title the errand's title
 * @param event the event's name, may be empty
 * @param dates its days, where somebody said
 * @param design name of the design
 * @param count how many in all
 * @param verdict what fire, rules and design say of the cloth: comes before all else
 * @param heed what to heed
 * @param buy what to buy
 * @param kit what to have at hand
 * @param wearers who wears them, where there are several
 * @param beforeCutting what to do before cutting, in its order
 * @param garments how each garment is sewn
 * @param rules what the rules of the event say
 * @param toAsk what is not known yet and matters
 * @param presumed what nobody said and what was taken for it
 */
public record ErrandSheet(
        String title,
        String event,
        Optional<EventDates> dates,
        String design,
        int count,
        Verdict verdict,
        Heed heed,
        List<ShoppingItem> buy,
        List<KitItem> kit,
        List<SheetWearer> wearers,
        List<SheetStep> beforeCutting,
        List<GarmentSheet> garments,
        AppliedRules rules,
        List<OpenQuestion> toAsk,
        List<String> presumed) {

    /** Where what a sheet says of tools and of the order of work comes from. */
    public static final String PRACTICE = "Common practice, no source.";

    public ErrandSheet {
        buy = List.copyOf(buy);
        kit = List.copyOf(kit);
        wearers = List.copyOf(wearers);
        beforeCutting = List.copyOf(beforeCutting);
        garments = List.copyOf(garments);
        toAsk = List.copyOf(toAsk);
        presumed = List.copyOf(presumed);
    }
}
