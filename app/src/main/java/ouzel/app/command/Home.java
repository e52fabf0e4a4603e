package ouzel.app.command;

import java.nio.file.Path;
import ouzel.app.journal.JournalFiles;

/**
 * Where the program keeps its files unless it is told otherwise.
 *
 * @param directory the user's home directory
 */
record Home(Path directory) {
    static Home ofUser() {
        return new Home(Path.of(System.getProperty("user.home")));
    }

    Path journals(boolean rehearsal) {
        return JournalFiles.directory(directory, rehearsal);
    }

    Path log() {
        return directory.resolve(".ouzel").resolve("ouzel.log");
    }
}
