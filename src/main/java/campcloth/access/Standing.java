package campcloth.access;

import java.util.Optional;

/**
 * What an asker may do with a thing that is there for them.
 *
 * @param own whether it is theirs
 * @param mayChange whether they may change and remove it
 * @param mayChangeRules of an event, whether they may change its rules at least
 * @param mayShare whether they may share it by a link and take the link back
 * @param mayHandOver whether they may make it common
 * @param key the key of its link while it is shared; told only to those who may share it
 */
public record Standing(
        boolean own,
        boolean mayChange,
        boolean mayChangeRules,
        boolean mayShare,
        boolean mayHandOver,
        Optional<ShareKey> key) {

    public static Standing of(Holding holding, ThingKind kind, Asker asker) {
        boolean own = holding.isOwn(asker);
        boolean changes = holding.mayChange(asker, kind.keeper());
        return new Standing(
                own,
                changes,
                kind == ThingKind.EVENT && holding.mayChangeRules(asker),
                changes,
                own && kind.canBecomeCommon() && asker.is(kind.keeper()),
                changes ? holding.key() : Optional.empty());
    }
}
