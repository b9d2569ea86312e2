/**
 * Files of references: RIS, MEDLINE as PubMed exports it, BibTeX and CSL-JSON, read with every fault at its place and written
 * so that reading gives the same again.
 */
@NullMarked
package comparand.reference.format;

import org.jspecify.annotations.NullMarked;
