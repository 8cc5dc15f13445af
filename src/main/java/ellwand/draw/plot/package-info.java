/** Drawings for pens and blades: strokes in an order that wastes little travel, HP-GL/2 and DXF. */
package ellwand.draw.plot;
