package campcloth.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.CampclothApplication;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.mock.env.MockEnvironment;

/** A service without logins does not start where others reach it. */
@ExtendWith(OutputCaptureExtension.class)
class StartTest {

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "", " ", "no-such-host.invalid"})
    void whereOthersReachItNobodyIsServedWithoutALogin(String address) {
        assertThatThrownBy(() -> check(Map.of("server.address", address)))
                .isInstanceOf(NotStarted.class)
                .hasMessageContainingAll(
                        "In local mode nobody logs in", "SERVER_ADDRESS=127.0.0.1", "CAMPCLOTH_MODE=hosted");
    }

    @Test
    void noAddressIsEveryAddress() {
        assertThatThrownBy(() -> check(Map.of())).isInstanceOf(NotStarted.class).hasMessageContaining("\"any\"");
    }

    @ParameterizedTest
    @CsvSource({"local, 127.0.0.1", "LOCAL, ::1", "'', localhost", "hosted, 0.0.0.0", "Hosted, 192.0.2.7"})
    void whereItMayStartItDoes(String mode, String address) {
        assertThatCode(() -> check(Map.of("server.address", address, "campcloth.mode", mode)))
                .doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"remote", "hosted ", "true"})
    void anUnknownModeIsNoMode(String mode) {
        assertThatThrownBy(() -> check(Map.of("server.address", "127.0.0.1", "campcloth.mode", mode)))
                .isInstanceOf(NotStarted.class)
                .hasMessageContainingAll("\"" + mode + "\"", "local", "hosted");
    }

    @Test
    void theRefusalIsToldInPlaceOfAStackTrace(CapturedOutput output) {
        assertThatThrownBy(() -> SpringApplication.run(
                        CampclothApplication.class, "--server.address=0.0.0.0", "--server.port=0"))
                .hasStackTraceContaining("NotStarted");
        assertThat(output.getAll())
                .contains("APPLICATION FAILED TO START", "\"0.0.0.0\"", "CAMPCLOTH_MODE=hosted")
                .as("a trace of another service in this machine, at rest meanwhile, is none of ours")
                .doesNotContain("\tat " + ModeCheck.class.getName());
    }

    private static void check(Map<String, String> settings) {
        MockEnvironment environment = new MockEnvironment();
        settings.forEach(environment::setProperty);
        new ModeCheck().postProcessEnvironment(environment, new SpringApplication());
    }
}
