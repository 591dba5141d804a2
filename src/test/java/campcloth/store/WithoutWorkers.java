package campcloth.store;

import campcloth.store.postgres.OnRealPostgres;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;

/** The service without workers of its own: such tests hand out jobs and calls themselves, on one database for all of them. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(properties = {"campcloth.jobs.run=false", "spring.datasource.hikari.maximum-pool-size=5"})
@OnRealPostgres
@interface WithoutWorkers {}
