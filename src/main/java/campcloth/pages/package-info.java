/**
 * The service as people see it: pages rendered here, forms that work without scripts, texts in {@code messages/}. Translates what
 * is typed into core values and shows what the core answers; decides nothing. Each family of pages is a package of its own; what
 * all share stands here. May import every core room, never {@code store} and never {@code rest}.
 */
@NullMarked
package campcloth.pages;

import org.jspecify.annotations.NullMarked;
