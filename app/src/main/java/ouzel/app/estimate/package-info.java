/** What the measured current, voltage, pressure and switches say about the sample: pure estimates with uncertainty. */
package ouzel.app.estimate;
