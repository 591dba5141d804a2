package campcloth.figure;

/**
 * Why something that was given cannot be used.
 *
 * @param field path of the field that is at fault, as the giver wrote it ({@code spells[1].airC})
 * @param because what is wrong with it
 * @param remedy what would make it right
 */
public record Refusal(String field, String because, String remedy) {

    /** The same refusal seen from the owner of the field. */
    public Refusal within(String owner) {
        String path = field.isEmpty() ? owner : field.startsWith("[") ? owner + field : owner + "." + field;
        return new Refusal(path, because, remedy);
    }

    /** One sentence: what is wrong and what to do. */
    public String sentence() {
        return because + "; " + remedy;
    }
}
