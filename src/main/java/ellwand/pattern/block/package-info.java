/**
 * Blocks: basic patterns drafted from body measures, each by a named method. blocks.md says whose,
 * and how each point is found. All in mm, x along the grain towards the top, y to the left of that;
 * a half bodice or skirt has its centre at y = 0.
 */
package ellwand.pattern.block;
