package campcloth.deploy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The files in {@code deploy/} agree with each other, with the program and with what their README says of settings. */
class DeployFilesTest {

    private static final Map<String, String> LABEL = Map.of("app.kubernetes.io/name", "campcloth");
    private static final String PAGES = "8080";
    private static final String MANAGEMENT = "8081";

    private final Yaml deployment = DeployFiles.manifest("Deployment", "campcloth");
    private final Yaml pod = deployment.at("spec", "template", "spec");
    private final Yaml container = pod.at("containers", 0);
    private final Yaml compose = DeployFiles.yaml("compose.yaml").get(0);

    @Test
    void everyFileIsAmongTheResourcesOrAnExample() throws IOException {
        Yaml kustomization = DeployFiles.yaml("kubernetes/kustomization.yaml").get(0);
        Set<String> listed =
                kustomization.at("resources").items().stream().map(Yaml::text).collect(Collectors.toSet());
        try (Stream<Path> files = Files.list(DeployFiles.FOLDER.resolve("kubernetes"))) {
            assertThat(files.map(file -> file.getFileName().toString())
                            .filter(name -> !name.equals("kustomization.yaml") && !name.contains(".example.")))
                    .containsExactlyInAnyOrderElementsOf(listed);
        }
        assertThat(DeployFiles.manifests()).allSatisfy(manifest -> {
            assertThat(manifest.at("apiVersion").text()).isNotEmpty();
            assertThat(manifest.at("metadata", "name").text()).startsWith("campcloth");
            assertThat(manifest.at("metadata", "namespace").isThere()).isFalse();
        });
    }

    @Test
    void everySelectorFindsThePods() {
        assertThat(deployment.at("spec", "template", "metadata", "labels").map())
                .isEqualTo(LABEL);
        assertThat(deployment.at("spec", "selector", "matchLabels").map()).isEqualTo(LABEL);
        assertThat(DeployFiles.manifest("Service", "campcloth")
                        .at("spec", "selector")
                        .map())
                .isEqualTo(LABEL);
        assertThat(DeployFiles.manifest("PodDisruptionBudget", "campcloth")
                        .at("spec", "selector", "matchLabels")
                        .map())
                .isEqualTo(LABEL);
        assertThat(DeployFiles.manifest("NetworkPolicy", "campcloth")
                        .at("spec", "podSelector", "matchLabels")
                        .map())
                .isEqualTo(LABEL);
        assertThat(pod.at("topologySpreadConstraints", 0, "labelSelector", "matchLabels")
                        .map())
                .isEqualTo(LABEL);
        Yaml scaled =
                DeployFiles.manifest("HorizontalPodAutoscaler", "campcloth").at("spec", "scaleTargetRef");
        assertThat(scaled.at("kind").text() + "/" + scaled.at("name").text()).isEqualTo("Deployment/campcloth");
    }

    @Test
    void portsAndProbesAreThoseOfTheProgram() throws IOException {
        assertThat(DeployFiles.environmentOfTheImage())
                .containsEntry("SERVER_PORT", PAGES)
                .containsEntry("MANAGEMENT_SERVER_PORT", MANAGEMENT);
        assertThat(port("http")).isEqualTo(PAGES);
        assertThat(port("management")).isEqualTo(MANAGEMENT);
        assertThat(DeployFiles.manifest("Service", "campcloth")
                        .at("spec", "ports", 0, "targetPort")
                        .text())
                .isEqualTo("http");
        assertThat(probe("startupProbe")).isEqualTo("management/actuator/health/liveness");
        assertThat(probe("livenessProbe")).isEqualTo("management/actuator/health/liveness");
        assertThat(probe("readinessProbe")).isEqualTo("management/actuator/health/readiness");
        Yaml annotations = deployment.at("spec", "template", "metadata", "annotations");
        assertThat(annotations.at("prometheus.io/port").text()).isEqualTo(MANAGEMENT);
        assertThat(annotations.at("prometheus.io/path").text()).isEqualTo("/actuator/prometheus");
        String proxy = Files.readString(DeployFiles.FOLDER.resolve("haproxy.cfg"));
        assertThat(proxy)
                .contains("uri /actuator/health/readiness", "check port " + MANAGEMENT)
                .contains("server one one:" + PAGES, "server two two:" + PAGES)
                .contains("unique-id-header X-Request-Id", "del-header X-Forwarded-For")
                .as("%61ctuator is actuator to what answers")
                .contains("deny_status 404 if { path,url_dec -m beg /actuator }");
        assertThat(Files.readString(DeployFiles.FOLDER.resolve("Dockerfile")))
                .contains("/dev/tcp/127.0.0.1/" + MANAGEMENT, "GET /actuator/health/readiness");
    }

    @Test
    void itEndsBeforeItIsKilled() throws IOException {
        int twoPhases = 2 * DeployFiles.setting("timeout-per-shutdown-phase=(\\d+)s");
        int before = Integer.parseInt(
                container.at("lifecycle", "preStop", "exec", "command", 1).text());
        assertThat(Integer.parseInt(pod.at("terminationGracePeriodSeconds").text()))
                .isGreaterThanOrEqualTo(before + twoPhases + 10);
        for (String service : List.of("one", "two")) {
            String grace = compose.at("services", service, "stop_grace_period").text();
            assertThat(Integer.parseInt(grace.replace("s", ""))).isGreaterThanOrEqualTo(twoPhases + 10);
        }
        assertThat(Files.readString(DeployFiles.FOLDER.resolve("campcloth.service")))
                .contains("TimeoutStopSec=" + (twoPhases + 10));
    }

    @Test
    void theDatabaseHasRoomForAllInstances() throws IOException {
        int pool = DeployFiles.setting("maximum-pool-size=(\\d+)");
        int instances = Integer.parseInt(DeployFiles.manifest("HorizontalPodAutoscaler", "campcloth")
                .at("spec", "maxReplicas")
                .text());
        int more = Integer.parseInt(
                deployment.at("spec", "strategy", "rollingUpdate", "maxSurge").text());
        assertThat(Integer.parseInt(DeployFiles.manifest("Cluster", "campcloth-db")
                        .at("spec", "postgresql", "parameters", "max_connections")
                        .text()))
                .isGreaterThanOrEqualTo(pool * (instances + more) + 20);
    }

    @Test
    void theProgramIsNobodyAndWritesNowhere() throws IOException {
        assertThat(pod.at("securityContext", "runAsNonRoot").text()).isEqualTo("true");
        String user = pod.at("securityContext", "runAsUser").text();
        assertThat(Files.readString(DeployFiles.FOLDER.resolve("Dockerfile")))
                .contains("\nUSER " + user + ":" + user + "\n");
        assertThat(pod.at("securityContext", "seccompProfile", "type").text()).isEqualTo("RuntimeDefault");
        assertThat(pod.at("automountServiceAccountToken").text()).isEqualTo("false");
        assertThat(pod.at("enableServiceLinks").text()).isEqualTo("false");
        Yaml security = container.at("securityContext");
        assertThat(security.at("readOnlyRootFilesystem").text()).isEqualTo("true");
        assertThat(security.at("allowPrivilegeEscalation").text()).isEqualTo("false");
        assertThat(security.at("capabilities", "drop").text()).isEqualTo("[ALL]");
        for (Object name : compose.at("services").map().keySet()) {
            Yaml service = compose.at("services", name);
            assertThat(service.at("read_only").text()).as("%s", name).isEqualTo("true");
            assertThat(service.at("cap_drop").text()).as("%s", name).isEqualTo("[ALL]");
            assertThat(service.at("security_opt").text()).as("%s", name).contains("no-new-privileges:true");
            assertThat(service.at("healthcheck").isThere()
                            || service.at("build").isThere())
                    .as("health of %s", name)
                    .isTrue();
        }
    }

    @Test
    void everythingHasALimit() {
        for (String which : List.of("requests", "limits")) {
            assertThat(container.at("resources", which).map().keySet().stream().map(Object::toString))
                    .containsExactlyInAnyOrder("cpu", "memory");
        }
        assertThat(pod.at("volumes").items())
                .filteredOn(volume -> volume.at("emptyDir").isThere())
                .isNotEmpty()
                .allMatch(volume -> volume.at("emptyDir", "sizeLimit").isThere());
        for (Object name : compose.at("services").map().keySet()) {
            for (String limit : List.of("mem_limit", "cpus", "pids_limit")) {
                assertThat(compose.at("services", name, limit).isThere())
                        .as("%s of %s", limit, name)
                        .isTrue();
            }
        }
    }

    @Test
    void everyImageHasAVersion() throws IOException {
        List<String> images = Stream.concat(
                        Stream.concat(DeployFiles.manifests().stream(), Stream.of(compose))
                                .flatMap(Yaml::everything)
                                .flatMap(place -> Stream.of(place.at("image"), place.at("imageName")))
                                .map(Yaml::text)
                                .filter(image -> !image.isEmpty()),
                        Pattern.compile("(?m)^ARG [A-Z]+_IMAGE=(.*)$")
                                .matcher(Files.readString(DeployFiles.FOLDER.resolve("Dockerfile")))
                                .results()
                                .map(found -> found.group(1)))
                .toList();
        assertThat(images)
                .hasSizeGreaterThanOrEqualTo(7)
                .allMatch(image -> image.matches("[a-z0-9./-]+:\\d[\\w.-]*"), "a tag that begins with a number");
        assertThat(images).contains("campcloth:" + DeployFiles.versionInThePom());
    }

    @Test
    void secretsHoldNoValues() throws IOException {
        assertThat(DeployFiles.manifests()).noneMatch(m -> m.at("kind").text().equals("Secret"));
        assertThat(DeployFiles.yaml("kubernetes/secrets.example.yaml"))
                .filteredOn(m -> m.at("kind").text().equals("Secret"))
                .hasSize(2)
                .allSatisfy(secret -> assertThat(
                                secret.at("stringData").map().values().stream().map(Object::toString))
                        .isNotEmpty()
                        .containsOnly(""));
        for (Object name : compose.at("secrets").map().keySet()) {
            assertThat(compose.at("secrets", name).map().keySet().stream().map(Object::toString))
                    .containsExactly("file");
        }
        assertThat(Files.readAllLines(Path.of(".gitignore"))).contains("deploy/secrets/");
        assertThat(Files.readAllLines(Path.of(".dockerignore"))).contains("*").noneMatch(l -> l.contains("!deploy"));
    }

    @Test
    void everySettingIsInTheTableOfTheReadme() throws IOException {
        Set<String> used = new TreeSet<>(DeployFiles.environmentOfTheImage().keySet());
        used.remove("JAVA_TOOL_OPTIONS");
        compose.at("services", "one", "environment").map().keySet().forEach(name -> used.add(name.toString()));
        DeployFiles.manifest("ConfigMap", "campcloth-settings")
                .at("data")
                .map()
                .keySet()
                .forEach(name -> used.add(name.toString()));
        Stream<Yaml> files = Stream.concat(
                pod.at("volumes").items().stream().flatMap(Yaml::everything).map(place -> place.at("path")),
                compose.at("services", "one", "secrets").items().stream().map(secret -> secret.at("target")));
        files.map(Yaml::text)
                .filter(path -> path.contains(".") && !path.endsWith(".crt"))
                .forEach(path ->
                        used.add(path.toUpperCase(Locale.ROOT).replace(".", "_").replace("ADMIN-", "ADMIN_")));
        assertThat(used).hasSizeGreaterThan(12);
        assertThat(DeployFiles.settingsInTheReadme()).containsAll(used);
    }

    private String port(String name) {
        return container.at("ports").items().stream()
                .filter(port -> port.at("name").text().equals(name))
                .map(port -> port.at("containerPort").text())
                .findFirst()
                .orElse("none");
    }

    private String probe(String name) {
        Yaml get = container.at(name, "httpGet");
        return get.at("port").text() + get.at("path").text();
    }
}
