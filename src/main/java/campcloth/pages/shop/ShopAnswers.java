package campcloth.pages.shop;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Ranking;
import campcloth.advice.Verdict;
import campcloth.cloth.Alike;
import campcloth.cloth.Bale;
import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.Estimates;
import campcloth.errand.Asked;
import campcloth.errand.Asking;
import campcloth.errand.TakenEvent;
import campcloth.event.Events;
import campcloth.event.Seasons;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelReader;
import campcloth.fibre.LabelReading;
import campcloth.garment.Sizes;
import campcloth.pages.plan.WornLayers;
import campcloth.pages.plan.WornLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Answers the form: what the label comes to, judged, reckoned, compared. */
@Component
class ShopAnswers {

    private static final int ALIKE = 3;

    private final LabelReader labels;
    private final Fibre unknown;
    private final Adviser adviser;
    private final Events events;
    private final Seasons seasons;
    private final Sizes sizes;
    private final Cloths cloths;
    private final Lengths lengths;
    private final WornLayers worn;

    ShopAnswers(
            LabelReader labels,
            Fibres fibres,
            Adviser adviser,
            Events events,
            Seasons seasons,
            Sizes sizes,
            Cloths cloths,
            Lengths lengths,
            WornLayers worn) {
        this.labels = labels;
        this.unknown = fibres.require(Fibre.UNKNOWN);
        this.adviser = adviser;
        this.events = events;
        this.seasons = seasons;
        this.sizes = sizes;
        this.cloths = cloths;
        this.lengths = lengths;
        this.worn = worn;
    }

    /** Refuses what cannot be used of the event, the garment and the figures; a label is never refused but told of. */
    ShopAnswer of(ShopForm form) {
        TakenEvent event = form.event(events, seasons);
        Bale bale = bale(form);
        Asking asking = form.asking(event.event(), sizes, worn.of(form, event.event()));
        Asked asked = asking.about(() -> candidates(bale.mayBe(unknown)));
        Ranking ranking = adviser.rank(asked.question());
        Judged worst = worst(ranking);
        Cloth cloth = worst.candidate().cloth();
        Cloth completed = Estimates.complete(cloth);
        MayI may = MayI.of(worst, !event.event().rules().isEmpty());
        HowMuch howMuch = lengths.of(form, completed);
        LabelTold label = LabelTold.of(form.labelText(), bale.reading());
        return new ShopAnswer(
                event,
                form.chosenDesign(),
                cloth,
                completed,
                label,
                may,
                ifRaised(asking, bale, worst.verdict()),
                howMuch,
                Watch.of(may, cloth, howMuch, label),
                WornLine.of(adviser, asked.question()),
                asked.presumed(ranking),
                ranking.cautions(),
                Alike.to(cloth, cloths, ALIKE).neighbours());
    }

    /** The cloth that would be kept for the bale. */
    Cloth cloth(ShopForm form) {
        return of(form).cloth();
    }

    private Bale bale(ShopForm form) {
        Optional<LabelReading> reading = form.labelText()
                .map(text -> form.language == null ? labels.read(text) : labels.read(text, form.language));
        return new Bale(reading, form.make(), form.figures());
    }

    /** Nothing where the face was told, or where a raised one stands no worse. */
    private Optional<Verdict> ifRaised(Asking asking, Bale bale, Verdict told) {
        if (!bale.faceIsPresumed()) {
            return Optional.empty();
        }
        Asked raised = asking.about(() -> candidates(bale.mayBeRaised(unknown)));
        return Optional.of(worst(adviser.rank(raised.question())).verdict())
                .filter(verdict -> verdict.compareTo(told) > 0);
    }

    private static List<Candidate> candidates(List<Cloth> mayBe) {
        List<Candidate> candidates = new ArrayList<>();
        mayBe.forEach(cloth -> candidates.add(new Candidate("part-" + (candidates.size() + 1), cloth)));
        return candidates;
    }

    private static Judged worst(Ranking ranking) {
        return ranking.judged().get(ranking.judged().size() - 1);
    }
}
