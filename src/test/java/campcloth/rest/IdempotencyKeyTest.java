package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys as they come in a header; strings in quotes after RFC 8941, 3.3.3 and 4.2.5. */
class IdempotencyKeyTest {

    @Test
    void quotesAndTheirEscapesAreNoPartOfTheKey() {
        assertThat(IdempotencyKey.read("\"8e03978e\"")).isEqualTo("8e03978e");
        assertThat(IdempotencyKey.read(" 8e03978e ")).isEqualTo("8e03978e");
        assertThat(IdempotencyKey.read("\"a\\\"b\\\\c\"")).isEqualTo("a\"b\\c");
        assertThat(IdempotencyKey.read("x".repeat(100))).hasSize(100);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "\"\"", "\"a", "a\"", "\u00e9", "\"\u00e9\"", "a\u0000", "\"a\\b\"", "a\\b", "\"a\";p=1"})
    void whatIsNoStringAndNoVisibleTextIsNoKey(String header) {
        assertThatThrownBy(() -> IdempotencyKey.read(header)).isInstanceOf(Refused.class);
    }
}
