package ouzel.app.command;

import java.nio.file.Path;

/**
 * A rehearsal in virtual time, without a window.
 *
 * @param seed what all its chance comes from: the same seed gives the same sortie
 * @param out the directory for its journal and its table of samples
 * @param site the site's name
 */
public record RehearsalRequest(long seed, Path out, String site) {}
