/** Words: the language files, and the sentences of a drill as terminal and window say them. */
package startwater.text;
