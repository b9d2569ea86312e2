package comparand.document.form;

import comparand.document.Edition;
import java.util.List;

/**
 * A workbook to be filled in.
 *
 * @param edition title, date and tool, as files say of themselves
 * @param pages sheets to be read or to hold single answers
 * @param tables sheets with a row for each thing
 * @param lists the words that cells offer; they stand on a sheet of their own, with what each means
 */
public record FormBook(Edition edition, List<FormPage> pages, List<FormTable> tables, List<FormList> lists) {

    public FormBook {
        pages = List.copyOf(pages);
        tables = List.copyOf(tables);
        lists = List.copyOf(lists);
    }
}
