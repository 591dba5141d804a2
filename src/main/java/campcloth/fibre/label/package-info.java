/**
 * The grammar of fibre-content labels: characters to tokens, tokens to known words, words to parts and shares. Hidden behind
 * {@code LabelReader}. Shares are percent of mass.
 */
@NullMarked
package campcloth.fibre.label;

import org.jspecify.annotations.NullMarked;
