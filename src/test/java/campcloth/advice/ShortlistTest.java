package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.ClothColumns;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothsInMemory;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick pass over a great many cloths against judging each of them. */
class ShortlistTest {

    private static final int CLOTHS = 2_000;
    private static final int EVENTS = 5;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theFirstAreTheSameInTheSameOrderAsThoughAllWereJudged(long seed) {
        ClothsInMemory cloths = new ClothsInMemory(new DrawnCloths(seed).some(CLOTHS));
        Shortlist shortlist = new Shortlist(Camp.ADVISER, cloths, 0);
        RandomEvents events = new RandomEvents(seed);
        for (int i = 0; i < EVENTS; i++) {
            Question question = question(events.event(), new SplittableRandom(100 * seed + i), List.of());
            Shortlist.Ranked quick = shortlist.rank(question, ClothSearch.EVERYTHING, 20);
            Ranking full = Camp.ADVISER.rank(question.of(candidates(cloths)));
            List<Judged> first = full.judged().subList(0, Shortlist.USUAL);
            assertThat(told(quick.ranking().judged()))
                    .as("%s, event %d: %s", events, i, question)
                    .isEqualTo(told(first));
            assertThat(quick.lower()).isEqualTo(CLOTHS - Shortlist.USUAL);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void noClothComesToMoreOrLessThanTheQuickPassSays(long seed) {
        ClothsInMemory cloths = new ClothsInMemory(new DrawnCloths(seed).some(CLOTHS));
        ClothColumns columns = cloths.columns(ClothSearch.EVERYTHING);
        List<Candidate> all = candidates(cloths);
        RandomEvents events = new RandomEvents(seed);
        for (int i = 0; i < EVENTS; i++) {
            Question question = question(events.event(), new SplittableRandom(100 * seed + i), all);
            Judging judging = Camp.ADVISER.judging(question, all.get(0));
            List<QuickPass.Promising> promising =
                    QuickPass.of(judging, all.get(0).cloth(), columns, CLOTHS);
            assertThat(promising).hasSize(CLOTHS);
            ComfortTable.Reader reader = ComfortTable.of(judging, all.get(0).cloth(), columns).new Reader();
            for (QuickPass.Promising one : promising) {
                Weighed weighed = judging.weighed(all.get(one.row()));
                String as = events + ", event " + i + ", " + all.get(one.row());
                assertThat(Rank.of(weighed.judged())).as(as).isBetween(one.least() - 1e-6, one.most() + 1e-6);
                reader.read(
                        columns.thicknessMm(one.row()),
                        columns.permeabilityMmS(one.row()),
                        columns.vapourResistanceM2PaW(one.row()));
                assertThat(reader.score())
                        .as(as)
                        .isCloseTo(judging.comfortScore(weighed.facts().spells()), within(reader.error()));
                boolean passes = !Warnings.asksForCaution(weighed.facts().spells(), judging.bounds());
                assertThat(passes ? reader.mayPass() : !reader.surelyPasses())
                        .as(as)
                        .isTrue();
            }
        }
    }

    @Test
    void fewClothsAreJudgedEach() {
        ClothsInMemory cloths = new ClothsInMemory(new DrawnCloths(7).some(150));
        Question question = question(new RandomEvents(7).event(), new SplittableRandom(7), List.of());
        Shortlist.Ranked ranked = new Shortlist(Camp.ADVISER, cloths).rank(question, ClothSearch.EVERYTHING, 20);
        assertThat(ranked.ranking()).isEqualTo(Camp.ADVISER.rank(question.of(candidates(cloths))));
        assertThat(ranked.lower()).isZero();
        assertThat(ranked.judged()).isEqualTo(150);
        assertThat(ranked.note()).isEmpty();
    }

    @Test
    void whatIsHandedInIsRankedAmongTheCatalogue() {
        ClothsInMemory cloths = new ClothsInMemory(new DrawnCloths(8).some(CLOTHS));
        List<Candidate> handedIn = new ArrayList<>();
        new DrawnCloths(9).some(40).forEach((id, cloth) -> handedIn.add(new Candidate("inline-" + id, cloth)));
        handedIn.addAll(candidates(cloths).subList(0, 10));
        Question question = question(new RandomEvents(8).event(), new SplittableRandom(8), handedIn);
        List<Candidate> all = new ArrayList<>(handedIn.subList(0, 40));
        all.addAll(candidates(cloths));
        Shortlist.Ranked quick = new Shortlist(Camp.ADVISER, cloths, 0).rank(question, ClothSearch.EVERYTHING, 150);
        assertThat(told(quick.ranking().judged()))
                .isEqualTo(told(Camp.ADVISER.rank(question.of(all)).judged().subList(0, 150)));
        assertThat(quick.lower()).isEqualTo(CLOTHS + 40 - 150);
    }

    private static List<Candidate> candidates(ClothsInMemory cloths) {
        return cloths.matching(ClothSearch.EVERYTHING).stream()
                .map(kept -> new Candidate(kept.id(), kept.cloth()))
                .toList();
    }

    private static List<String> told(List<Judged> judged) {
        return judged.stream()
                .map(j -> j.candidate().id() + " " + j.verdict() + " " + j.score())
                .toList();
    }

    static Question question(Event event, SplittableRandom random, List<Candidate> candidates) {
        boolean onSkin = random.nextBoolean();
        Wear wear = new Wear(
                onSkin,
                onSkin ? Layer.SKIN : Layer.values()[random.nextInt(Layer.values().length)],
                Fit.values()[random.nextInt(Fit.values().length)],
                random.nextInt(3) == 0,
                random.nextDouble(20, 90),
                random.nextDouble(0.4, 4));
        List<OutfitPart> parts = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            parts.add(new OutfitPart(
                    Kind.LINING,
                    Optional.of(Camp.CATALOGUE.cloths().values().iterator().next()),
                    Optional.empty()));
        }
        if (random.nextInt(3) == 0) {
            parts.add(new OutfitPart(Kind.SHIRT, Optional.empty(), Optional.empty()));
        }
        return new Question(event, wear, wear, new Outfit(parts), candidates);
    }
}
