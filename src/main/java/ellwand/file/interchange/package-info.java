/** Patterns as DXF, in and out, by the layers of ASTM D6673; and any other DXF drawing in. */
package ellwand.file.interchange;
