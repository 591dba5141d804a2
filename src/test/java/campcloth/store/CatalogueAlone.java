package campcloth.store;

import campcloth.journey.WholeService;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.test.context.TestPropertySource;

/** The whole service on a database without others' cloths; such tests leave it as it comes. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@WholeService
@TestPropertySource(properties = "a.database=of the catalogue alone")
@interface CatalogueAlone {}
