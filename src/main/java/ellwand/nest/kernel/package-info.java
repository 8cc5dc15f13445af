/**
 * Overlap arithmetic and separation search on flat arrays; knows shapes, not pieces of cloth.
 *
 * <p>Frame: x along the strip from its cut end, y across; any one unit of length. Every outline
 * comes in one orientation and runs counter-clockwise; what a copy may do is a list of {@link
 * ellwand.nest.kernel.Form}s. {@link ellwand.nest.kernel.Search} is the way in.
 *
 * <p>The depth of an overlap is the shortest shift that ends it, read from the no-fit polygon of
 * the two shapes (Egeblad, Nielsen and Odgaard 2007; Imamichi, Yagiura and Nagamochi 2009).
 */
package ellwand.nest.kernel;
