package campcloth.door;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.Date;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import tools.jackson.databind.json.JsonMapper;

/** An OpenID Connect provider of a few lines on this machine, at which everybody is logged in as the person that is set. */
final class SmallIssuer implements AutoCloseable {

    static final String CLIENT = "campcloth-under-test";

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpServer server;
    private final RSAKey key;
    private final Map<String, String> nonces = new HashMap<>();

    volatile Map<String, Object> person = Map.of();

    /** Signs with this key in place of the one it publishes. */
    volatile boolean forges;

    SmallIssuer() throws IOException, JOSEException {
        this.key = new RSAKeyGenerator(2048).keyID("one").generate();
        this.server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/.well-known/openid-configuration", exchange -> answer(exchange, metadata()));
        server.createContext("/keys", exchange -> answer(exchange, new JWKSet(key.toPublicJWK()).toJSONObject()));
        server.createContext("/authorize", this::authorize);
        server.createContext("/token", this::token);
        server.start();
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    private Map<String, Object> metadata() {
        return Map.of(
                "issuer",
                address(),
                "authorization_endpoint",
                address() + "/authorize",
                "token_endpoint",
                address() + "/token",
                "jwks_uri",
                address() + "/keys",
                "response_types_supported",
                new String[] {"code"},
                "subject_types_supported",
                new String[] {"public"},
                "id_token_signing_alg_values_supported",
                new String[] {"RS256"});
    }

    private void authorize(HttpExchange exchange) throws IOException {
        Map<String, String> asked = parameters(exchange.getRequestURI().getRawQuery());
        String code = UUID.randomUUID().toString();
        nonces.put(code, asked.getOrDefault("nonce", ""));
        exchange.getResponseHeaders()
                .set("Location", asked.get("redirect_uri") + "?code=" + code + "&state=" + asked.get("state"));
        exchange.sendResponseHeaders(302, -1);
        exchange.close();
    }

    private void token(HttpExchange exchange) throws IOException {
        Map<String, String> asked =
                parameters(new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
        String nonce = nonces.remove(asked.get("code"));
        try {
            answer(
                    exchange,
                    Map.of(
                            "access_token",
                            "unused",
                            "token_type",
                            "Bearer",
                            "expires_in",
                            60,
                            "id_token",
                            identity(nonce)));
        } catch (JOSEException broken) {
            throw new IOException(broken);
        }
    }

    private String identity(String nonce) throws JOSEException {
        JWTClaimsSet.Builder claims = new JWTClaimsSet.Builder()
                .issuer(address())
                .audience(CLIENT)
                .issueTime(Date.from(Instant.now()))
                .expirationTime(Date.from(Instant.now().plusSeconds(60)))
                .claim("nonce", nonce);
        person.forEach(claims::claim);
        SignedJWT token = new SignedJWT(
                new JWSHeader.Builder(JWSAlgorithm.RS256).keyID(key.getKeyID()).build(), claims.build());
        token.sign(new RSASSASigner(forges ? new RSAKeyGenerator(2048).generate() : key));
        return token.serialize();
    }

    private static void answer(HttpExchange exchange, Map<String, Object> body) throws IOException {
        byte[] bytes = JSON.writeValueAsBytes(body);
        exchange.getResponseHeaders().set("Content-Type", "application/json");
        exchange.sendResponseHeaders(200, bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private static Map<String, String> parameters(String form) {
        Map<String, String> parameters = new HashMap<>();
        Arrays.stream(form.split("&"))
                .map(part -> part.split("=", 2))
                .forEach(part -> parameters.put(part[0], URLDecoder.decode(part[1], StandardCharsets.UTF_8)));
        return parameters;
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
