package campcloth;

import campcloth.store.BackupCommand;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service: the database first, then the catalogue, then the web edge. Or makes a backup, or puts one back. */
@SpringBootApplication
public class CampclothApplication {

    public static void main(String[] args) {
        if (BackupCommand.isOne(args)) {
            System.exit(BackupCommand.run(args));
        }
        SpringApplication.run(CampclothApplication.class, args);
    }
}
