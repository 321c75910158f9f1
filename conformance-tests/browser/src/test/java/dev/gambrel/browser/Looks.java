package dev.gambrel.browser;

/** What is asked of a page that is shown; each script gives a list of what is wrong, in words. */
final class Looks {
    /** Words of pictures that lie on one another; a pixel of white at each edge of a letter is not seen. */
    static final String OVERLAPS = """
            const texts = [...document.querySelectorAll('svg text')].filter(t => t.textContent.trim() !== '')
                .map(t => ({ text: t.textContent, box: t.getBoundingClientRect() }))
                .sort((a, b) => a.box.top - b.box.top);
            const found = [];
            for (let i = 0; i < texts.length; i++) {
                for (let j = i + 1; j < texts.length && texts[j].box.top < texts[i].box.bottom; j++) {
                    const a = texts[i].box, b = texts[j].box;
                    const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
                    const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
                    if (across > 0.5 && down > 1.5) found.push(texts[i].text + ' | ' + texts[j].text);
                }
            }
            return found;
            """;

    /** Words that reach out of their picture, at the sides or above and below. */
    static final String OUTSIDE = """
            return [...document.querySelectorAll('svg text')].filter(t => {
                const svg = t.ownerSVGElement.getBoundingClientRect(), box = t.getBoundingClientRect();
                return box.left < svg.left - 0.5 || box.right > svg.right + 0.5
                    || box.top < svg.top - 0.5 || box.bottom > svg.bottom + 0.5;
            }).map(t => t.textContent);
            """;

    static final String SIDEWAYS = """
            const root = document.documentElement;
            return root.scrollWidth <= root.clientWidth ? [] : [root.scrollWidth + ' of ' + root.clientWidth];
            """;

    /** Contrast by WCAG 2.2, 1.4.3: 4.5 to 1 at least, on white, the only ground that words stand on. */
    static final String FAINT = """
            const light = c => { const v = c / 255; return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4; };
            const faint = new Set();
            const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            while (walker.nextNode()) {
                const holder = walker.currentNode.parentElement, style = getComputedStyle(holder);
                if (walker.currentNode.textContent.trim() === '') continue;
                const colour = holder instanceof SVGElement ? style.fill : style.color;
                const [r, g, b] = colour.match(/[0-9.]+/g).map(Number);
                const contrast = 1.05 / (0.2126 * light(r) + 0.7152 * light(g) + 0.0722 * light(b) + 0.05);
                if (contrast < 4.5) faint.add(colour + ': ' + contrast);
            }
            return [...faint];
            """;

    /** What could run, or fetch anything. */
    static final String ACTIVE = """
            return [...document.querySelectorAll('*')].filter(e =>
                ['script', 'img', 'image', 'iframe', 'object', 'embed', 'link', 'base', 'form', 'a', 'use', 'foreignObject',
                    'video', 'audio'].includes(e.localName)
                || [...e.attributes].some(a => /^on|^href$|^src|^action$|:href$/i.test(a.name))
            ).map(e => e.outerHTML.slice(0, 80)).concat(/url\\s*\\(|@import/i.test(
                [...document.querySelectorAll('style')].map(s => s.textContent).join()) ? ['style'] : []);
            """;

    /** Headings that skip a level, pictures without a title, cells that head nothing. */
    static final String UNTITLED = """
            const found = [];
            let last = 0;
            for (const h of document.querySelectorAll('h1, h2, h3, h4')) {
                const level = Number(h.localName[1]);
                if (level > last + 1) found.push(h.textContent);
                last = level;
            }
            for (const s of document.querySelectorAll('svg'))
                if (s.getAttribute('role') !== 'img' || !s.querySelector('title').textContent) found.push('svg');
            for (const h of document.querySelectorAll('table:not([role]) th'))
                if (!h.scope) found.push(h.textContent);
            if (document.documentElement.lang !== 'en' || !document.title) found.push('document');
            return found;
            """;

    private Looks() {}
}
