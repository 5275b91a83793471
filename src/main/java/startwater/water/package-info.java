/** Equations of water chemistry: pure functions of the state, without time. One class per published equation. */
package startwater.water;
