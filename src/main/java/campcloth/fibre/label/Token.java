package campcloth.fibre.label;

/**
 * A word, a number or a sign of the label text.
 *
 * @param sort what it is
 * @param from first character in the text
 * @param to character after the last
 * @param text the characters; signs that look alike are written as one of {@code % / , ; : + & - . * ( )} or a line break
 */
record Token(Sort sort, int from, int to, String text) {

    enum Sort {
        WORD,
        NUMBER,
        SIGN
    }

    boolean isWord() {
        return sort == Sort.WORD;
    }

    boolean isSign(String sign) {
        return sort == Sort.SIGN && text.equals(sign);
    }
}
