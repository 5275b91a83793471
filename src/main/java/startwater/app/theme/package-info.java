/** How the window looks: colours, type, the style sheet, and the tools with which the painted parts draw. */
package startwater.app.theme;
