/**
 * The packing engine behind {@link campcloth.layout.Nesting}: forbidden spots of pairs of shapes, the lowest free spot, the
 * search over orders. Plain arrays of cm; knows nothing of pieces' names.
 */
@NullMarked
package campcloth.layout.search;

import org.jspecify.annotations.NullMarked;
