/** Live plots of pump current, fill and valve current over the desk's own sample series. */
package ouzel.app.screen.plot;
