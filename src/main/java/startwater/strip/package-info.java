/** How a reading comes about: pads, scales, colours, and the spread with which pads colour and people read them. */
package startwater.strip;
