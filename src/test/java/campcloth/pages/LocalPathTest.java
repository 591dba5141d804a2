package campcloth.pages;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LocalPathTest {

    @ParameterizedTest
    @ValueSource(strings = {"/", "/plan?event=a&chestCm=98", "/cloths/x#figures"})
    void ownAddressesStay(String address) {
        assertThat(LocalPath.of(address)).isEqualTo(address);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "//elsewhere.example",
                "https://elsewhere.example/",
                "/\\elsewhere.example",
                "",
                "javascript:alert(1)",
                "/a\r\nSet-Cookie: b",
                "/{x}",
                "/ü",
            })
    void othersBecomeTheFirstPage(String address) {
        assertThat(LocalPath.of(address)).isEqualTo("/");
    }
}
