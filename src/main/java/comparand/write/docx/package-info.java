/** Text documents that somebody goes on writing: styles, captions, bookmarks, tables (Office Open XML, by Apache POI). */
@NullMarked
package comparand.write.docx;

import org.jspecify.annotations.NullMarked;
