/** Painted and composed parts of the screens; each takes an immutable record and draws only what it says. */
package startwater.app.view.part;
