/** The class: hand-outs, attempts that come back, statistics over them, and what is exported. Knows no window. */
package startwater.classroom;
