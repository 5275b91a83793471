/** Sheets for a class to print: worksheet, answer key, results, record of completion. Each is one HTML page. */
package startwater.classroom.sheet;
