package campcloth.deploy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** A place in a YAML document; a place that is not there has no value and no children. */
record Yaml(Object node) {

    private static final Object NOTHING = new Object();

    /** Every document of a file; a key that stands twice is a failure. */
    static List<Yaml> all(Path file) throws IOException {
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        List<Yaml> documents = new ArrayList<>();
        new org.yaml.snakeyaml.Yaml(new SafeConstructor(options))
                .loadAll(Files.readString(file))
                .forEach(document -> documents.add(new Yaml(document)));
        return documents;
    }

    /** The place at a path of keys and numbers. */
    Yaml at(Object... path) {
        Object here = node;
        for (Object step : path) {
            if (here instanceof Map<?, ?> map && map.containsKey(step)) {
                here = map.get(step);
            } else if (here instanceof List<?> list && step instanceof Integer i && i < list.size()) {
                here = list.get(i);
            } else {
                return new Yaml(NOTHING);
            }
        }
        return new Yaml(here == null ? NOTHING : here);
    }

    boolean isThere() {
        return node != NOTHING;
    }

    String text() {
        return isThere() ? node.toString() : "";
    }

    Map<?, ?> map() {
        return node instanceof Map<?, ?> map ? map : Map.of();
    }

    List<Yaml> items() {
        return node instanceof List<?> list ? list.stream().map(Yaml::new).toList() : List.of();
    }

    /** This place and all below it. */
    Stream<Yaml> everything() {
        Stream<?> children = node instanceof List<?> list ? list.stream() : map().values().stream();
        return Stream.concat(Stream.of(this), children.flatMap(child -> new Yaml(child).everything()));
    }
}
