/** Laws of nature as pure functions, each with its units, its range, its source and its refusal outside the range. */
package ouzel.simulator.physics;
