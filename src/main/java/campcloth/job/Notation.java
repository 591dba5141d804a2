package campcloth.job;

/** How what is asked and what came of it is written down. */
public interface Notation {

    String write(Object value);

    <T> T read(String text, Class<T> type);
}
