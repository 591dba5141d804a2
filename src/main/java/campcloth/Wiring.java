package campcloth;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.advice.Adviser;
import campcloth.advice.Shortlist;
import campcloth.advice.UsualTraits;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.errand.ErrandSheets;
import campcloth.event.Seasons;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelReader;
import campcloth.fibre.LabelVocabulary;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import campcloth.fire.OutfitAdvice;
import campcloth.garment.Sizes;
import campcloth.layout.LayoutGate;
import campcloth.plan.CuttingPlanner;
import campcloth.supply.ListDesk;
import campcloth.supply.ListReader;
import campcloth.supply.ListWords;
import campcloth.supply.SupplierLists;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Puts the plain classes of the core together; the edges are found by the framework. */
@Configuration
class Wiring {

    /** Time for one layout: what a person waits for without noticing. */
    private static final double LAYOUT_SECONDS = 0.3;

    @Bean
    LabelReader labelReader(LabelVocabulary vocabulary) {
        return new LabelReader(vocabulary);
    }

    @Bean
    ListReader listReader(ListWords words, LabelReader labels, Fibres fibres) {
        return new ListReader(words, labels, fibres);
    }

    @Bean
    ListDesk listDesk(SupplierLists lists, ListReader reader) {
        return new ListDesk(lists, reader);
    }

    @Bean
    FireAdvice fireAdvice(Fibres fibres) {
        return new FireAdvice(new FireRules(fibres));
    }

    @Bean
    Adviser adviser(FireAdvice fireAdvice) {
        return new Adviser(fireAdvice);
    }

    @Bean
    Shortlist shortlist(Adviser adviser, Cloths cloths) {
        return new Shortlist(adviser, cloths);
    }

    @Bean
    OutfitAdvice outfitAdvice(FireAdvice fireAdvice) {
        return new OutfitAdvice(fireAdvice);
    }

    @Bean
    ClothTraiter clothTraiter(FireAdvice fireAdvice, Seasons seasons, Fibres fibres) {
        return new UsualTraits(fireAdvice, seasons, fibres);
    }

    @Bean
    ErrandSheets errandSheets(Adviser adviser, OutfitAdvice outfitAdvice, Sizes sizes, Fibres fibres) {
        return new ErrandSheets(adviser, outfitAdvice, sizes, fibres);
    }

    @Bean
    CuttingPlanner cuttingPlanner() {
        return new CuttingPlanner(LAYOUT_SECONDS);
    }

    /** Nobody logs in: whoever asks is the one owner. */
    @Bean
    Askers askers() {
        return new Askers(Asker.LOCAL);
    }

    @Bean
    LayoutGate layoutGate() {
        return new LayoutGate();
    }
}
