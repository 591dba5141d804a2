package campcloth.pages.shop;

import campcloth.advice.Verdict;
import campcloth.cloth.Cloth;
import campcloth.cloth.Neighbour;
import campcloth.cloth.Property;
import campcloth.errand.TakenEvent;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.garment.Design;
import campcloth.pages.plan.WornLine;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is told of a bale.
 *
 * @param event the event that was asked about
 * @param design the garment
 * @param cloth the cloth that stands for the bale, as told
 * @param completed the same with its estimates
 * @param label what became of its label
 * @param may the verdict
 * @param ifRaised the verdict should its face be raised, where nobody said and that is worse
 * @param howMuch what to buy
 * @param watch what to watch, in short
 * @param worn what is worn over and under the garment
 * @param presumed what nobody said and was taken
 * @param cautions what to bear in mind whatever the cloth
 * @param alike cloths of the catalogue that are most like it
 */
public record ShopAnswer(
        TakenEvent event,
        Design design,
        Cloth cloth,
        Cloth completed,
        LabelTold label,
        MayI may,
        Optional<Verdict> ifRaised,
        HowMuch howMuch,
        List<Said> watch,
        List<WornLine> worn,
        List<String> presumed,
        List<String> cautions,
        List<Neighbour> alike) {

    /** Properties that are estimated, for they were not told. */
    public List<Property> estimated() {
        return completed.figures().entrySet().stream()
                .filter(entry -> entry.getValue().basis() == Basis.ESTIMATED)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Whether a figure that everybody can ask for in a shop is estimated. */
    public boolean isEstimated(String property) {
        return estimated().contains(Property.valueOf(property));
    }

    public Map<Property, Figure> figures() {
        return completed.figures();
    }
}
