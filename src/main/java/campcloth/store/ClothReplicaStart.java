package campcloth.store;

import campcloth.fibre.Fibres;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Connects to a copy of the database where one is told; user and password are those of the database unless told as well. */
@Configuration
@ConditionalOnProperty("campcloth.replica.url")
class ClothReplicaStart {

    @Bean
    ClothReplica clothReplica(
            @Value("${campcloth.replica.url}") String url,
            @Value("${campcloth.replica.username:}") String user,
            @Value("${campcloth.replica.password:}") String password,
            JdbcConnectionDetails database,
            Json json,
            Fibres fibres) {
        return new ClothReplica(
                url,
                told(user, database.getUsername()),
                told(password, database.getPassword()),
                ClothReplica.Patience.USUAL,
                json,
                fibres);
    }

    private static String told(String here, @Nullable String otherwise) {
        return here.isEmpty() && otherwise != null ? otherwise : here;
    }
}
