/**
 * The sums a keeper works: one function per sum, each with its units, its working in one line and its source. The command
 * line, the marks for working and the figures of lessons all draw on these.
 */
package startwater.bench;
