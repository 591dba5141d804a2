package campcloth.access;

import java.util.Map;

/** What a call was answered, to be answered again. */
public record CallAnswer(int status, Map<String, String> headers, String body) {

    public CallAnswer {
        headers = Map.copyOf(headers);
    }
}
