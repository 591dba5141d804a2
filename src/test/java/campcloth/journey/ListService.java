package campcloth.journey;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.test.context.TestPropertySource;

/** The whole service for tests that take thousands of cloths over and write all out again, on a database that no other tests look into. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@WholeService
@TestPropertySource(properties = "a.database=of lists")
@interface ListService {}
