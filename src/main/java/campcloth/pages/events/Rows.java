package campcloth.pages.events;

import campcloth.event.Event;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.event.Seasons;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the buttons of the form do to its rows.
 *
 * @param what which row is meant; empty where the button is not about one
 */
record Rows(Kind kind, int what) {

    private static final Pattern BUTTON =
            Pattern.compile("(season|add-spell|add-rule|remove-spell|remove-rule)(?:-(\\d{1,3}))?");

    enum Kind {
        SEASON,
        ADD_SPELL,
        ADD_RULE,
        REMOVE_SPELL,
        REMOVE_RULE
    }

    /** The button that was pressed; empty where it was the one that keeps the event. */
    static Optional<Rows> pressed(String button) {
        Matcher parts = BUTTON.matcher(button);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Kind kind = Kind.valueOf(parts.group(1).replace('-', '_').toUpperCase(Locale.ROOT));
        return Optional.of(new Rows(kind, parts.group(2) == null ? 0 : Integer.parseInt(parts.group(2))));
    }

    /** Which fields need not be read any more, for their row goes away; empty where none does. */
    Optional<String> unread() {
        return switch (kind) {
            case SEASON -> Optional.of("spells*");
            case REMOVE_SPELL -> Optional.of("spells[" + what + "]*");
            case REMOVE_RULE -> Optional.of("rules[" + what + "]*");
            case ADD_SPELL, ADD_RULE -> Optional.empty();
        };
    }

    /** The field to go to next. */
    String next(EventForm form) {
        return switch (kind) {
            case ADD_SPELL -> "spells" + (form.spells.size() - 1) + ".name";
            case ADD_RULE -> "rules" + (form.rules.size() - 1) + ".authority";
            case SEASON, REMOVE_SPELL -> "spells";
            case REMOVE_RULE -> "rules";
        };
    }

    /** @param readable whether everything typed could be read, so that numbers of rows may change */
    void apply(EventForm form, Seasons seasons, boolean readable) {
        switch (kind) {
            case SEASON -> form.takeSpells(seasons.spells(form.season == null ? Season.SUMMER : form.season));
            case ADD_SPELL -> {
                if (form.spellsShown().size() < Event.MOST_SPELLS) {
                    form.spells.add(
                            form.spellsShown().isEmpty()
                                    ? new SpellForm()
                                    : SpellForm.after(form.spells.get(form.spellsShown()
                                            .get(form.spellsShown().size() - 1))));
                }
            }
            case ADD_RULE -> {
                if (form.rulesShown().size() < Event.MOST_RULES) {
                    RuleForm rule = new RuleForm();
                    rule.authority = Authority.EVENT;
                    form.rules.add(rule);
                }
            }
            case REMOVE_SPELL -> {
                if (what < form.spells.size()) {
                    form.spells.get(what).gone = true;
                }
            }
            case REMOVE_RULE -> {
                if (what < form.rules.size()) {
                    form.rules.get(what).gone = true;
                }
            }
        }
        if (readable) {
            form.spells.removeIf(spell -> spell.gone);
            form.rules.removeIf(rule -> rule.gone);
        }
    }
}
