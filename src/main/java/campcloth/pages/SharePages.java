package campcloth.pages;

import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Shares;
import campcloth.access.Standing;
import campcloth.access.ThingKind;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** What the reader may do with a thing that a page shows, and the buttons that share it and hand it over. */
@Controller
public class SharePages {

    private static final String BACK = "redirect:/{family}/{id}#share";
    private static final String FAMILY = "/{family:events|sheets|cloths}/{id}";

    private static final Map<String, ThingKind> KINDS =
            Map.of("events", ThingKind.EVENT, "sheets", ThingKind.SHEET, "cloths", ThingKind.CLOTH);

    private final Shares shares;
    private final Askers askers;

    SharePages(Shares shares, Askers askers) {
        this.shares = shares;
        this.askers = askers;
    }

    /**
     * Tells a page what its reader may do.
     *
     * @param family first part of its address
     */
    public void into(Model model, String family, String id) {
        Standing standing = standing(family, id);
        model.addAttribute("standing", standing);
        model.addAttribute("family", family);
        model.addAttribute("thingId", id);
        model.addAttribute("sharedAddress", address(family, id, standing).orElse(null));
    }

    /** Refuses the form of a thing to who may only read it; who may change an event's rules needs its form for that. */
    public void checkMayChange(String family, String id) {
        Standing standing = standing(family, id);
        if (!standing.mayChange() && !standing.mayChangeRules()) {
            throw kind(family).notChangedByYou();
        }
    }

    /** Whether the reader may change an event's rules and nothing else of it. */
    public boolean onlyRules(String eventId) {
        return shares.of(ThingKind.EVENT, eventId)
                .filter(standing -> standing.mayChangeRules() && !standing.mayChange())
                .isPresent();
    }

    /** Refuses to ask somebody whether a thing shall go who may not remove it. */
    public void checkMayRemove(String family, String id) {
        if (!standing(family, id).mayChange()) {
            throw kind(family).notChangedByYou();
        }
    }

    /** Of these, the ones that the reader may change and remove. */
    public Set<String> changeable(String family, Collection<String> ids) {
        return shares.changeable(kind(family), ids);
    }

    private Standing standing(String family, String id) {
        ThingKind kind = kind(family);
        return shares.of(kind, id).orElseThrow(() -> new NotHere(kind.words()));
    }

    @PostMapping(FAMILY + "/share")
    String share(@PathVariable String family, @PathVariable String id) {
        return done(shares.share(kind(family), id).isPresent(), family);
    }

    @PostMapping(FAMILY + "/unshare")
    String unshare(@PathVariable String family, @PathVariable String id) {
        return done(shares.unshare(kind(family), id), family);
    }

    @PostMapping(FAMILY + "/hand-over")
    String handOver(@PathVariable String family, @PathVariable String id) {
        return done(shares.handOver(kind(family), id), family);
    }

    /** By which others read it: with its key while it is shared; where nobody logs in, as it is. */
    private Optional<String> address(String family, String id, Standing standing) {
        String plain = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/" + family + "/" + id)
                .toUriString();
        Optional<String> shared = standing.key().map(key -> plain + "?" + LinkKeys.PARAMETER + "=" + key.text());
        Asker asker = askers.now();
        boolean nobodyLogsIn = asker.account().isEmpty() && asker.isKnown();
        return shared.isEmpty() && nobodyLogsIn ? Optional.of(plain) : shared;
    }

    private static String done(boolean isThere, String family) {
        if (!isThere) {
            throw new NotHere(kind(family).words());
        }
        return BACK;
    }

    private static ThingKind kind(String family) {
        return Optional.ofNullable(KINDS.get(family)).orElseThrow(() -> new NotHere("page"));
    }
}
