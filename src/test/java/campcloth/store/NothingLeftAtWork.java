package campcloth.store;

import static org.awaitility.Awaitility.await;

import java.time.Duration;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.support.AbstractTestExecutionListener;

/**
 * After each test nobody works on a job any more and none is kept: the next test has every worker, every place and an empty queue,
 * whichever test it is. Where no workers run, whoever worked was the test's own and has ended with it.
 */
public final class NothingLeftAtWork extends AbstractTestExecutionListener {

    private static final Duration PATIENCE = Duration.ofMinutes(3);

    /** After the tests' own ends and before the context is closed. */
    @Override
    public int getOrder() {
        return LOWEST_PRECEDENCE;
    }

    @Override
    public void afterTestMethod(TestContext test) {
        ApplicationContext service = test.getApplicationContext();
        service.getBeansOfType(JobWorkers.class).values().forEach(workers -> {
            JdbcTemplate sql = service.getBean(JdbcTemplate.class);
            if (workers.isRunning()) {
                putAway(sql);
            } else {
                sql.update("delete from job");
            }
        });
    }

    private static void putAway(JdbcTemplate sql) {
        sql.update("delete from job where state <> 'RUNNING'");
        sql.update("update job set cancel_asked = true");
        await("the end of the jobs").atMost(PATIENCE).until(() -> {
            sql.update("delete from job where state <> 'RUNNING'");
            return none(sql);
        });
    }

    private static boolean none(JdbcTemplate sql) {
        Integer left = sql.queryForObject("select count(*) from job", Integer.class);
        return left != null && left == 0;
    }
}
