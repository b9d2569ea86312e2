package comparand.browser;

/** Works every control of a page once, those that come up meanwhile too, and closes what opens. */
final class EveryControl {

    /** Select: each choice. Field: its ends and nonsense. The rest: pressed. Files are another test's. */
    private static final String WORK = """
            const done = arguments[arguments.length - 1];
            const frame = () => new Promise(r => requestAnimationFrame(() => setTimeout(r, 0)));
            const tell = (el, ...kinds) => kinds.forEach(k => el.dispatchEvent(new Event(k, {bubbles: true})));
            const shown = el => el.isConnected && !el.disabled && el.getClientRects().length > 0;
            const set = async (el, value) => { el.value = value; tell(el, 'input', 'change'); await frame(); };
            const work = async el => {
              if (el.tagName === 'SELECT') {
                for (const value of [...el.options].map(o => o.value)) { await set(el, value); }
                await set(el, el.options[0].value);
              } else if (el.tagName === 'INPUT' && ['checkbox', 'radio'].includes(el.type)) {
                el.click(); await frame(); el.click();
              } else if (el.tagName === 'INPUT' || el.tagName === 'TEXTAREA') {
                const before = el.value;
                for (const value of [el.min || '0', el.max || '3', '-1', 'x', '', before]) { await set(el, value); }
              } else {
                el.click();
              }
              await frame();
              document.querySelectorAll('dialog[open]').forEach(d => d.close());
            };
            (async () => {
              const worked = new WeakSet();
              let count = 0;
              for (let round = 0; round < 3; round++) {
                for (const el of document.querySelectorAll('button, input:not([type=file]), select, textarea, summary')) {
                  if (shown(el) && !worked.has(el) && count < 2000) {
                    worked.add(el);
                    await work(el);
                    count++;
                  }
                }
              }
              done(String(count));
            })().catch(e => done('failed: ' + e));
            """;

    private EveryControl() {}

    /** How many there were. */
    static int work(Browser browser) {
        browser.run("window.print = () => {}");
        var count = browser.later(WORK);
        browser.settle();
        return Integer.parseInt(count);
    }
}
