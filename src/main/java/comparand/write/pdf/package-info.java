/**
 * Documents as PDF: pages, wrapped text and tables with repeating headings, tagged for readers that read aloud.
 *
 * <p>The PDF library's own tables cannot be tagged, so lines and tables are laid out here and every piece is put into the
 * structure tree as it is drawn.
 */
@NullMarked
package comparand.write.pdf;

import org.jspecify.annotations.NullMarked;
