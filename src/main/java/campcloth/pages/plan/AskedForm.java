package campcloth.pages.plan;

import campcloth.access.ShareKey;
import campcloth.cloth.Outfit;
import campcloth.errand.Asking;
import campcloth.errand.TakenEvent;
import campcloth.errand.WantedGarment;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Spell;
import campcloth.figure.Refused;
import campcloth.fire.ClothingUse;
import campcloth.garment.Design;
import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.Sizes;
import campcloth.pages.NotHere;
import campcloth.pages.TypedIn;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which event and which garment is asked about, as an address tells it: an event on file, or a season with a simple day; a design, a
 * size, measurements. What the core refuses of it is told at the fields by {@link #field}.
 */
public class AskedForm {

    private static final String WEARER = "garment.wearer.";
    private static final String GARMENT = "garment.";

    /** Id of an event on file; the season and the day tell nothing beside it. */
    public @Nullable String event;

    /** Keys of the links by which the event is shared with who asks; they go wherever the event goes. */
    public List<String> key = new ArrayList<>();

    public @Nullable Season season;
    public SpellForm day = new SpellForm();
    public SpellForm evening = new SpellForm();
    public SpellForm night = new SpellForm();

    /** Key of a design. */
    public @Nullable String design;

    /** Key of a size, for what was not measured. */
    public @Nullable String size;

    /** By the key of {@link Measurement}; those that the design has no use for are left alone. */
    @TypedIn(Units.Measure.LENGTH_CM)
    public Map<String, @Nullable Double> measures = new LinkedHashMap<>();

    public @Nullable Boolean nextToSkin;
    public @Nullable ClothingUse use;

    /** What is worn under the garment, and on the legs. */
    public List<WornForm> under = new ArrayList<>();

    /** What is worn over it, and on head, hands and feet. */
    public List<WornForm> over = new ArrayList<>();

    /** Somebody asked for more rows of what is worn. */
    public @Nullable Boolean more;

    /** The event on file, or the one that season and day tell of; nothing is there where no such event is kept. */
    public TakenEvent event(Events events, Seasons seasons) {
        if (event != null) {
            return TakenEvent.of(events.byId(event).orElseThrow(() -> new NotHere("event")));
        }
        if (season == null) {
            throw Refused.of("season", "is not chosen", "choose an event or a season");
        }
        return TakenEvent.told(told(season, seasons));
    }

    /** Refuses one that is not known or not chosen. */
    public Design chosenDesign() {
        if (design == null) {
            throw Refused.of(GARMENT + "design", "is not chosen", "choose a garment");
        }
        return Asking.design(design);
    }

    /** The garment alone, one of it, as usual in all that is not asked here. */
    public WantedGarment garment() {
        return garment(Outfit.UNTOLD);
    }

    /** @param outfit what is worn with it */
    public WantedGarment garment(Outfit outfit) {
        Design chosen = chosenDesign();
        Map<String, Double> used = new TreeMap<>();
        for (Measurement measurement : chosen.measurements()) {
            Double cm = measures.get(measurement.key());
            if (cm != null) {
                used.put(measurement.key(), cm);
            }
        }
        return new WantedGarment(
                chosen.key(), used, Optional.ofNullable(size), Optional.ofNullable(nextToSkin), 1, Map.of(), outfit);
    }

    /** What was measured, and the size for the rest. */
    public Measurements measurements(Sizes sizes) {
        return Refused.within("garment", () -> garment().wearer(sizes));
    }

    /** All of it as the question is asked. */
    public Asking asking(Event of, Sizes sizes, Outfit outfit) {
        return new Asking(of, chosenDesign(), measurements(sizes), Optional.ofNullable(nextToSkin), outfit);
    }

    /** What it is wanted for; ordinary where nobody said. */
    public ClothingUse use() {
        return use == null ? ClothingUse.ORDINARY : use;
    }

    /** Whether somebody told anything of a simple day, and it counts. */
    public boolean tellsDay() {
        return event == null && !dayIsEmpty();
    }

    /** Whether a day was told beside an event on file, which has spells of its own. */
    public boolean tellsDayInVain() {
        return event != null && !dayIsEmpty();
    }

    boolean tellsMeasures() {
        return measures.values().stream().anyMatch(Objects::nonNull);
    }

    /** Whether anything is told of what is worn over and under it. */
    boolean tellsWorn() {
        return Stream.concat(under.stream(), over.stream()).anyMatch(row -> !row.isEmpty());
    }

    /** The same as the part of an address behind the question mark, in metric units. */
    public String query() {
        return written().toString();
    }

    /** The same as hidden fields of a form, in metric units. */
    public List<QueryPart> parts() {
        return written().parts();
    }

    private QueryText written() {
        QueryText query = new QueryText().add("event", event);
        key.stream().flatMap(text -> ShareKey.in(text).stream()).forEach(shown -> query.add("key", shown.text()));
        query.add("season", season);
        day.write("day", query);
        evening.write("evening", query);
        night.write("night", query);
        query.add("design", design).add("size", size);
        measures.forEach((key, cm) -> query.add("measures[" + key + "]", cm));
        query.add("nextToSkin", nextToSkin);
        WornForm.write("under", under, query);
        WornForm.write("over", over, query);
        return query.add("use", use);
    }

    /** The field of this form that a path of the core means. */
    public static String field(String path) {
        if (path.startsWith(WEARER)) {
            return "measures[" + path.substring(WEARER.length()) + "]";
        }
        return path.startsWith(GARMENT)
                ? path.substring(GARMENT.length())
                : path.replace("fire.distanceM", "fireDistanceM");
    }

    private boolean dayIsEmpty() {
        return day.isEmpty() && evening.isEmpty() && night.isEmpty();
    }

    private Event told(Season chosen, Seasons seasons) {
        if (dayIsEmpty()) {
            return new Event("", chosen, seasons.spells(chosen), List.of(), true);
        }
        SimpleDay usual = SimpleDay.usual(chosen, seasons);
        List<Spell> spells = List.of(
                Refused.within("day", () -> day.over(usual.day())),
                Refused.within("evening", () -> evening.over(usual.evening())),
                Refused.within("night", () -> night.over(usual.night())));
        return new Event("", chosen, spells, List.of());
    }
}
