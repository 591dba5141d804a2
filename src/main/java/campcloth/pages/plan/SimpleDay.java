package campcloth.pages.plan;

import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.event.Spell;
import java.util.List;

/** The three spells of a season that a simple day is told by: all but the first, which is the morning's work. */
record SimpleDay(Spell day, Spell evening, Spell night) {

    private static final int SPELLS = 3;

    /** What is usual in a season. */
    static SimpleDay usual(Season season, Seasons seasons) {
        List<Spell> spells = seasons.spells(season);
        List<Spell> last = spells.subList(spells.size() - SPELLS, spells.size());
        return new SimpleDay(last.get(0), last.get(1), last.get(2));
    }
}
