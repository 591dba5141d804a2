package campcloth.store.postgres;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Another Java process that starts the server on a folder and says on its output what it does. */
record ChildProcess(Process process, BufferedReader output) implements AutoCloseable {

    static ChildProcess start(Path data, String doing) throws IOException {
        return start(List.of(), classPath(), data, doing);
    }

    static ChildProcess start(List<String> prefix, List<String> classPath, Path data, String doing) throws IOException {
        List<String> command = new ArrayList<>(prefix);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-cp");
        command.add(String.join(File.pathSeparator, classPath));
        command.add(ServingMain.class.getName());
        command.add(data.toString());
        command.add(doing);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new ChildProcess(process, process.inputReader(StandardCharsets.UTF_8));
    }

    /** The test's own class path, also where the runner hides it in the manifest of a jar. */
    static List<String> classPath() {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return List.of(path.split(File.pathSeparator));
    }

    /** Reads on until a line holds the words, and gives what follows them. */
    String await(String words) throws IOException {
        StringBuilder heard = new StringBuilder();
        String line = output.readLine();
        while (line != null) {
            int at = line.indexOf(words);
            if (at >= 0) {
                return line.substring(at + words.length()).strip();
            }
            heard.append(line).append('\n');
            line = output.readLine();
        }
        throw new AssertionError("the child ended without saying " + words + ":\n" + heard);
    }

    /** All that is still to be read once the process is dead. */
    List<String> lastWords() {
        return output.lines().toList();
    }

    /** By its handle, which leaves what it said to be read. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        if (!process.waitFor(3, TimeUnit.MINUTES)) {
            throw new AssertionError("the child outlived its killing");
        }
    }

    @Override
    public void close() throws IOException {
        process.destroyForcibly();
        output.close();
    }
}
