/** Pages to print, as HTML that needs nothing else. Knows no other room. */
@org.jspecify.annotations.NullMarked
package startwater.page;
