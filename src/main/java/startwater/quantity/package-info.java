/** Units, conversions and physical constants, each with its source. Knows nothing of water or fish. */
package startwater.quantity;
