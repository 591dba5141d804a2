/** At the shop: a bale in hand, one form, one answer: whether it may, how much, what to watch. */
@NullMarked
package campcloth.pages.shop;

import org.jspecify.annotations.NullMarked;
