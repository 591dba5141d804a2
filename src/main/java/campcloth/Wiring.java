package campcloth;

import campcloth.access.AccountKeeping;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.LoginWaits;
import campcloth.access.Logins;
import campcloth.access.Mode;
import campcloth.access.NewIds;
import campcloth.access.PasswordHashes;
import campcloth.access.Vouching;
import campcloth.advice.Adviser;
import campcloth.advice.RankingWatch;
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
import campcloth.job.Bell;
import campcloth.job.JobQueue;
import campcloth.job.Jobs;
import campcloth.job.LayoutGate;
import campcloth.job.Notation;
import campcloth.job.Pace;
import campcloth.job.RankingGate;
import campcloth.job.Work;
import campcloth.job.Workers;
import campcloth.outage.Outages;
import campcloth.outage.Storage;
import campcloth.plan.CuttingPlanner;
import campcloth.supply.ListDesk;
import campcloth.supply.ListJobs;
import campcloth.supply.ListReader;
import campcloth.supply.ListTask;
import campcloth.supply.ListWords;
import campcloth.supply.SupplierLists;
import java.security.SecureRandom;
import java.util.List;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
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
    ListJobs listJobs(Jobs jobs, Askers askers, Notation notation, NewIds ids) {
        return new ListJobs(jobs, askers, notation, ids);
    }

    @Bean
    Work listTask(ListDesk desk, Notation notation) {
        return new ListTask(desk, notation);
    }

    @Bean
    FireAdvice fireAdvice(Fibres fibres) {
        return new FireAdvice(new FireRules(fibres));
    }

    @Bean
    Adviser adviser(FireAdvice fireAdvice, RankingWatch watch) {
        return new Adviser(fireAdvice, watch);
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

    @Bean
    Mode mode(@Value("${" + Mode.SETTING + ":}") String setting) {
        return Mode.named(setting).orElseThrow(() -> new IllegalArgumentException(Mode.SETTING + " is " + setting));
    }

    /** Where nobody logs in, whoever asks is the one owner. */
    @Bean
    Askers askers(Mode mode) {
        return new Askers(mode == Mode.LOCAL ? Asker.LOCAL : Asker.STRANGER);
    }

    /** Logging in. */
    @Configuration
    @ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
    static class Hosted {

        @Bean
        Logins logins(Accounts accounts, LoginWaits waits, PasswordHashes hashes) {
            return new Logins(accounts, waits, hashes, new SecureRandom());
        }

        @Bean
        Vouching vouching(Accounts accounts) {
            return new Vouching(accounts);
        }

        @Bean
        AccountKeeping accountKeeping(Accounts accounts, LoginWaits waits, PasswordHashes hashes) {
            return new AccountKeeping(accounts, waits, hashes, new SecureRandom());
        }
    }

    /** A database of our own knows its disk; of another nobody here knows. */
    @Bean
    Outages outages(ObjectProvider<Storage> ownStorage) {
        return new Outages(() -> ownStorage.stream().anyMatch(Storage::isLow));
    }

    @Bean
    LayoutGate layoutGate() {
        return new LayoutGate();
    }

    @Bean
    RankingGate rankingGate() {
        return new RankingGate();
    }

    @Bean
    NewIds newIds() {
        return new NewIds();
    }

    @Bean
    Bell bell() {
        return new Bell();
    }

    @Bean
    Pace pace() {
        return Pace.USUAL;
    }

    /** One place of the gate is left to those who wait for their answer, where there is more than one. */
    @Bean
    Workers workers(JobQueue queue, List<Work> works, Askers askers, NewIds ids, Bell bell, Pace pace) {
        return new Workers(queue, works, askers, ids, bell, pace, Math.max(1, LayoutGate.PLACES - 1));
    }
}
