/** Tables as files: RFC 4180, and safe to open in a spreadsheet. */
package startwater.classroom.table;
