/**
 * Overlap arithmetic and separation search on flat arrays; knows shapes, not pieces of cloth.
 *
 * <p>Frame: x along the strip from its cut end, y across; any one unit of length. Every outline
 * comes in one orientation and runs counter-clockwise; what a copy may do is a list of {@link
 * ellwand.nest.kernel.StripForm}s. {@link ellwand.nest.kernel.StripSearch} is the way in.
 *
 * <p>The search follows published research (details from memory):
 *
 * <ul>
 *   <li>Egeblad, Nielsen, Odgaard 2007, 'Fast neighborhood search for two- and three-dimensional
 *       nesting problems': strip packing as ending overlaps at a fixed length, by guided local
 *       search that moves one copy at a time and makes stubborn pairs dearer.
 *   <li>Umetani, Yagiura, Imahori, Imamichi, Nonobe, Ibaraki 2009, 'Solving the irregular strip
 *       packing problem via guided local search for overlap minimization'; Imamichi, Yagiura,
 *       Nagamochi 2009, 'An iterated local search algorithm based on nonlinear programming for the
 *       irregular strip packing problem': the depth of an overlap is the shortest shift that ends
 *       it, read from the no-fit polygon of the two shapes.
 *   <li>Gardeyn, Vanden Berghe, Wauters 2025, arXiv 2509.13329: the course of it. Shorten and part;
 *       when that fails begin again from one of the least bad failures with two large copies
 *       exchanged; at last shorten by ever smaller steps. Also: poses drawn at random, anywhere and
 *       nearby, the best of them brought down; weights that grow by a factor with the depth and
 *       fade; when a parting counts as failed.
 * </ul>
 *
 * <p>Ours: exact depths instead of a proxy, looked up in prepared tables ({@link
 * ellwand.nest.kernel.PairTable}); bringing a pose down along the worst overlaps ({@link
 * ellwand.nest.kernel.Descent}); giving back a part of the length after a failure; the first
 * layout; outlines thinned outwards while searching; blocks that are repeated ({@link
 * ellwand.nest.kernel.Tiling}); forms with their own lattices of places; threads that meet after
 * fixed numbers of evaluations, so that a search in steps repeats.
 */
package ellwand.nest.kernel;
