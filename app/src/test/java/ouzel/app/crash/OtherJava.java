package ouzel.app.crash;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Starts classes of this build in a Java of their own, which can be killed. */
final class OtherJava {
    private OtherJava() {}

    /** Starts {@code main}; what it prints goes to {@code printed}, and its home directory is {@code home}. */
    static Process start(Path home, Path printed, Class<?> main, String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx128m",
                "-Duser.home=" + home,
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                main.getName()));
        command.addAll(List.of(words));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
    }
}
