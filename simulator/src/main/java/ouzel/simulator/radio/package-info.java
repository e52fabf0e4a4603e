/** A radio that loses, repeats, delays, reorders and corrupts, from a seed. */
package ouzel.simulator.radio;
