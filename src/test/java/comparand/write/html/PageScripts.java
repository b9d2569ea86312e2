package comparand.write.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** The scripts of the page as its writer joins them, for tests that run them. */
public final class PageScripts {

    private PageScripts() {}

    /** All but the one that starts the page, which ends them. */
    public static String withoutTheStart() {
        var all = Scripts.joined();
        var start = Scripts.joined(List.of("start.js"));
        assertThat(all).endsWith(start).hasSizeGreaterThan(10 * start.length());
        return all.substring(0, all.length() - start.length());
    }
}
