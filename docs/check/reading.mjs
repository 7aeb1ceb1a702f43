// What the file of a page tells without a browser.

const entities = { '&amp;': '&', '&quot;': '"', '&#39;': "'", '&lt;': '<', '&gt;': '>' };
const plain = (text) => text.replace(/&(?:amp|quot|#39|lt|gt);/g, (entity) => entities[entity]);

const inner = (html) => plain(html.replace(/<[^>]*>/g, '')).trim();

/** Links of the article, names that a link may lead to, formulas that stayed text, and the length of the longest name. */
export function readPage(html) {
  const article = html.match(/<article[\s\S]*?<\/article>/)?.[0] ?? '';
  return {
    ids: new Set([...html.matchAll(/\sid="([^"]*)"/g)].map((found) => plain(found[1]))),
    links: [...article.matchAll(/<a\s[^>]*?href="([^"]*)"/g)].map((found) => plain(found[1])),
    formulas: leftAsText(article).slice(0, 2),
    longestName: Math.max(0, ...[...article.matchAll(/<(a|h\d)\b[^>]*>([\s\S]*?)<\/\1>/g)].map((found) => inner(found[2]).length)),
  };
}

// A formula that the writer of the page took for text has lost its backslashes before signs, even where the browser still
// draws what is left of it.
function leftAsText(article) {
  const text = article
    .replace(/<(code|pre)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<(span|div) class="math">[\s\S]*?<\/\1>/g, '')
    .replace(/<[^>]*>/g, '');
  return [...text.matchAll(/\$|\\[a-zA-Z]/g)].map((found) => text.slice(Math.max(0, found.index - 30), found.index + 50).replace(/\s+/g, ' '));
}
