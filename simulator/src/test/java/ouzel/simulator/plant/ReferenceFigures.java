package ouzel.simulator.plant;

import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

/** The reference payload's data file as plain keys and values. */
final class ReferenceFigures {
    private ReferenceFigures() {}

    static Map<String, String> read() {
        ResourceBundle bundle = ResourceBundle.getBundle("ouzel.simulator.plant.reference-payload");
        return bundle.keySet().stream().collect(Collectors.toMap(key -> key, bundle::getString));
    }
}
