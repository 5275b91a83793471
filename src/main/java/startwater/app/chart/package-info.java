/**
 * Charts that draw exactly what their record says, in the window's colours, with labels beside the lines and a sentence for
 * screen readers. All words come in with the record.
 */
package startwater.app.chart;
