/** What leaves the program for other programs: tables of samples. */
package ouzel.app.report;
