package ouzel.app.command;

import java.nio.file.Path;
import ouzel.simulator.rehearsal.Site;

/**
 * A rehearsal in virtual time, without a window.
 *
 * @param seed what all its chance comes from: the same seed gives the same sortie
 * @param out the directory for its journal and its table of samples
 * @param site where
 * @param flights how many sorties to fly, with this seed and those that follow it
 */
public record RehearsalRequest(long seed, Path out, Site site, int flights) {}
