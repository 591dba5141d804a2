package campcloth;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service: the database first, then the catalogue, then the web edge. */
@SpringBootApplication
public class CampclothApplication {

    public static void main(String[] args) {
        SpringApplication.run(CampclothApplication.class, args);
    }
}
