// Which pages the browser opens when it does not open all. Articles are written by hand, each in its own way: all of them.
// The pages of the API come from one template and differ in the names in them; what made one too wide was a long name, so the
// pages with the longest names are always among them.
const longest = 20;
const every = 12;

/** Takes the pages and, of each, the length of the longest name on it. */
export function sample(pages, longestName) {
  const generated = pages.filter((page) => page.startsWith('api/') && page !== 'api/index.html');
  const byName = [...generated].sort((a, b) => longestName(b) - longestName(a) || (a < b ? -1 : 1));
  const chosen = new Set([...byName.slice(0, longest), ...generated.filter((_, index) => index % every === 0)]);
  return pages.filter((page) => !generated.includes(page) || chosen.has(page));
}
