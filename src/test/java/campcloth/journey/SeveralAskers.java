package campcloth.journey;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestPropertySource;

/** The whole service for tests in which several people ask, on a database that no other tests look into. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@WholeService
@Import(AskersByHeader.class)
@TestPropertySource(properties = "a.database=of several people")
public @interface SeveralAskers {}
