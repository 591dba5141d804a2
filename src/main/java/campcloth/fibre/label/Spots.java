package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks the tokens up: longest phrase first, whole words only. Words that are not known stay, without a meaning. */
final class Spots {

    private Spots() {}

    static List<Spot> of(List<Token> tokens, Lexicon lexicon) {
        List<Spot> spots = new ArrayList<>();
        int at = 0;
        while (at < tokens.size()) {
            Token token = tokens.get(at);
            Optional<Lexicon.Match> match = token.isWord() ? lexicon.longest(tokens, at) : Optional.empty();
            if (match.isEmpty()) {
                spots.add(Spot.of(token));
                at++;
                continue;
            }
            int next = match.get().next();
            spots.add(new Spot(
                    Token.Sort.WORD,
                    token.from(),
                    tokens.get(next - 1).to(),
                    match.get().phrase(),
                    match.get().entries()));
            at = next;
        }
        return List.copyOf(spots);
    }
}
