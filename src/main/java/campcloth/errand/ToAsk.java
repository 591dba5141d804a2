package campcloth.errand;

import static campcloth.figure.Words.number;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.errand.OpenQuestion.About;
import campcloth.event.Event;
import campcloth.event.SafetyRule.Authority;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Basis;
import campcloth.fire.Exposure;
import campcloth.fire.FireJudgement;
import campcloth.fire.MissingRules;
import campcloth.fire.RuleConflict;
import campcloth.fire.RuleOutcome;
import campcloth.fire.SpellHazard;
import campcloth.garment.Designs;
import campcloth.garment.Measurement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is not known yet and matters, in the order in which to ask. */
final class ToAsk {

    private final CutErrand cut;
    private final List<OpenQuestion> questions = new ArrayList<>();

    private ToAsk(CutErrand cut) {
        this.cut = cut;
    }

    static List<OpenQuestion> of(CutErrand cut, FireJudgement fire, AppliedRules rules) {
        ToAsk asking = new ToAsk(cut);
        asking.addAuthorities();
        asking.addRules(rules);
        asking.addEvent(fire);
        asking.addCloth();
        asking.addWearer();
        return asking.questions;
    }

    private Event event() {
        return cut.errand().event().event();
    }

    private void add(About about, String question, String because) {
        questions.add(new OpenQuestion(about, question, because));
    }

    private void addAuthorities() {
        for (Authority authority : MissingRules.of(event().rules())) {
            add(
                    About.AUTHORITY,
                    "What are " + whose(authority) + " on clothing and fires? Ask " + MissingRules.whomToAsk(authority)
                            + ".",
                    "None on file, which is no permission.");
        }
    }

    private static String whose(Authority authority) {
        return switch (authority) {
            case EVENT -> "the event's rules";
            case VENUE -> "the venue's rules";
            case LOCAL_LAW -> "the rules of local law";
        };
    }

    private void addRules(AppliedRules rules) {
        for (RuleOutcome outcome : rules.outcomes()) {
            if (outcome.outcome() == RuleOutcome.Outcome.ASK) {
                add(
                        About.RULE,
                        "Does the garment keep to this rule? Ask " + MissingRules.whomToAsk(outcome.authority()) + ". "
                                + outcome.quoted() + ".",
                        outcome.because());
            }
        }
        for (RuleConflict conflict : rules.conflicts()) {
            if (conflict.noClothMeetsAll()) {
                add(
                        About.RULE,
                        "Which of these rules holds? Ask the event's organiser or fire marshal. " + conflict.text(),
                        "No cloth keeps to all of them.");
            }
        }
    }

    private void addEvent(FireJudgement fire) {
        if (event().spellsPresumed()) {
            add(
                    About.EVENT,
                    "What weather is forecast, and what work will be done when?",
                    "Nobody said: what is usual for " + event().season().name().toLowerCase(Locale.ROOT)
                            + " was taken, not a forecast.");
        }
        fire.spells().forEach(this::addFire);
    }

    private void addFire(SpellHazard at) {
        Exposure exposure = at.exposure();
        if (exposure.distanceM().isEmpty()) {
            add(
                    About.EVENT,
                    "How near does the wearer come to the fire in \"" + at.spell() + "\"?",
                    "Nobody said: " + number(exposure.distanceOrPresumedM()) + " m was taken.");
        }
        if (exposure.fireKw().isEmpty() && exposure.kind().isEmpty()) {
            add(
                    About.EVENT,
                    "How big is the fire in \"" + at.spell() + "\"?",
                    "Nobody said: " + number(exposure.fireKwOrPresumed()) + " kW was taken.");
        }
    }

    private void addCloth() {
        Cloth cloth = cut.cloth();
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED);
        if (unnamed > 0) {
            add(
                    About.CLOTH,
                    "What is it made of? Read the label, ask the seller, or burn a few threads as the burn test says.",
                    number(unnamed) + " % of its fibre is not named: the worst likely fibre was taken.");
        }
        if (!cut.isClosed() && isEstimated(Property.SHRINK_WARP_PERCENT, Property.SHRINK_WEFT_PERCENT)) {
            add(
                    About.CLOTH,
                    "How much does it shrink? Ask whether it was washed by its maker, or wash a marked swatch.",
                    "Along " + KnownAs.words(cloth.required(Property.SHRINK_WARP_PERCENT), "%") + ": "
                            + number(cut.plan().buyLengthCm()) + " cm to buy, "
                            + number(cut.plan().buyLengthHighCm()) + " cm at most.");
        }
        if (isEstimated(Property.WIDTH_CM)) {
            add(
                    About.CLOTH,
                    "How wide is it? Measure it in the shop, or ask.",
                    "Width " + KnownAs.words(cloth.required(Property.WIDTH_CM), "cm")
                            + ": the layout holds for that width alone.");
        }
        if (isEstimated(Property.WEIGHT_GSM)) {
            add(
                    About.CLOTH,
                    "How heavy is it? Weigh a piece of known size.",
                    "Weight " + KnownAs.words(cloth.required(Property.WEIGHT_GSM), "g/m2")
                            + ": warmth, flame spread, hems and needle go by it.");
        }
        addFeel();
    }

    private void addFeel() {
        String estimated = Stream.of(
                        Property.THICKNESS_MM, Property.AIR_PERMEABILITY_MM_S, Property.VAPOUR_RESISTANCE_M2PA_W)
                .filter(this::isEstimated)
                .map(ToAsk::words)
                .collect(Collectors.joining(", "));
        if (!estimated.isEmpty()) {
            add(
                    About.CLOTH,
                    "Measure a swatch: " + estimated + ".",
                    "Only estimated, with wide intervals: how warm and how airy it is goes by them.");
        }
    }

    private static String words(Property property) {
        return switch (property) {
            case THICKNESS_MM -> "thickness";
            case AIR_PERMEABILITY_MM_S -> "how much air passes";
            default -> "how much water vapour it holds back";
        };
    }

    private boolean isEstimated(Property... properties) {
        return Stream.of(properties)
                .anyMatch(property -> cut.cloth().required(property).basis() == Basis.ESTIMATED);
    }

    private void addWearer() {
        String design = cut.errand().garment().design();
        String missing = Designs.named(design).measurements().stream()
                .filter(measurement -> !isMeasured(measurement.key()))
                .map(Measurement::words)
                .collect(Collectors.joining("; "));
        if (!missing.isEmpty()) {
            String from = cut.errand()
                    .garment()
                    .size()
                    .map(size -> "taken from size " + size + ", or as usual: a size is nobody's measure.")
                    .orElse("taken as usual.");
            String whom = cut.errand().garment().others().isEmpty() ? "the wearer" : "everybody who wears one";
            add(About.WEARER, "Measure " + whom + ": " + missing + ".", "Not told; " + from);
        }
    }

    private boolean isMeasured(String key) {
        WantedGarment wanted = cut.errand().garment();
        return wanted.wearerCm().containsKey(key)
                && wanted.others().stream().allMatch(other -> other.wearerCm().containsKey(key));
    }
}
