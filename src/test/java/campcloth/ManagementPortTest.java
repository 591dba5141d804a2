package campcloth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringApplication;
import org.springframework.mock.env.MockEnvironment;

/** Where health and measurements are answered, by what the settings say. */
class ManagementPortTest {

    @Test
    void onThePortOfThePagesWhereOnePersonUsesIt() {
        MockEnvironment local = settled(Map.of());
        assertThat(local.getProperty(ManagementPort.PORT)).isNull();
        assertThat(local.getProperty(ManagementPort.ADDRESS)).isNull();
    }

    @Test
    void onAPortOfTheirOwnOnLoopbackWhereItIsHosted() {
        MockEnvironment hosted = settled(Map.of("campcloth.mode", "hosted"));
        assertThat(hosted.getProperty(ManagementPort.PORT)).isEqualTo("8081");
        assertThat(hosted.getProperty(ManagementPort.ADDRESS)).isEqualTo("127.0.0.1");
    }

    @Test
    void aPortOfTheirOwnIsOnLoopbackInEitherMode() {
        MockEnvironment told = settled(Map.of(ManagementPort.PORT, "9000"));
        assertThat(told.getProperty(ManagementPort.ADDRESS)).isEqualTo("127.0.0.1");
    }

    @Test
    void whatSomebodySaysIsKept() {
        MockEnvironment told = settled(
                Map.of("campcloth.mode", "hosted", ManagementPort.PORT, "9000", ManagementPort.ADDRESS, "0.0.0.0"));
        assertThat(told.getProperty(ManagementPort.PORT)).isEqualTo("9000");
        assertThat(told.getProperty(ManagementPort.ADDRESS)).isEqualTo("0.0.0.0");
    }

    @Test
    void thePortOfThePagesHasNoAddressOfItsOwn() {
        MockEnvironment same = settled(Map.of("campcloth.mode", "hosted", ManagementPort.PORT, "8080"));
        assertThat(same.getProperty(ManagementPort.ADDRESS)).isNull();
    }

    private static MockEnvironment settled(Map<String, String> told) {
        MockEnvironment environment = new MockEnvironment();
        told.forEach(environment::setProperty);
        new ManagementPort().postProcessEnvironment(environment, new SpringApplication());
        return environment;
    }
}
