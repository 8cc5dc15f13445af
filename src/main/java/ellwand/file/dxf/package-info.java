/** DXF: pairs of a group code and a value, a line each, as its publisher's reference has them. */
package ellwand.file.dxf;
