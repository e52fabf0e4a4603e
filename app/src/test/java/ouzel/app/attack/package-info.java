/** What somebody can do who hears everything, says anything, and holds no key. */
package ouzel.app.attack;
