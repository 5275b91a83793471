/** Attempts as xAPI statements, to a file or, when asked, to a learning record store. */
package startwater.classroom.xapi;
