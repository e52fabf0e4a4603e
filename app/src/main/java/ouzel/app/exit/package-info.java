/** How a run of the program ends: its exit codes, and refusals that carry one plain sentence. */
package ouzel.app.exit;
