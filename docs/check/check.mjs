// Opens every page of the built site in a headless browser, as a telephone and as a desktop would show it.
// Usage: node check.mjs SITE [--only BEGINNING... | --shots FOLDER PAGE...]; the names of pages begin with one of those given.
// Fails where a request fails or goes to another host, a page writes an error, the search finds nothing, a page is
// wider than a telephone, a formula stays as text, or a link leads to no page or no heading of the site.
import { chromium } from 'playwright-core';
import { createReadStream } from 'node:fs';
import { mkdir, readdir, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize, relative } from 'node:path';

const [site, option, ...rest] = process.argv.slice(2);
const [shots, ...wanted] = rest;
if (!site) throw new Error('usage: node check.mjs SITE [--only BEGINNING... | --shots FOLDER PAGE...]');

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};
const telephone = { width: 390, height: 844 };
const desktop = { width: 1280, height: 800 };

const server = createServer(async (request, response) => {
  let file = join(site, normalize(decodeURIComponent(new URL(request.url, 'http://x').pathname)));
  const found = await stat(file).catch(() => null);
  if (found?.isDirectory()) file = join(file, 'index.html');
  const there = await stat(file).catch(() => null);
  if (!there) {
    response.writeHead(404).end();
    return;
  }
  response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
  createReadStream(file).pipe(response);
});
await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const root = `http://127.0.0.1:${server.address().port}/`;

const pages = (await readdir(site, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile() && entry.name.endsWith('.html') && entry.name !== 'toc.html')
  .map((entry) => relative(site, join(entry.parentPath ?? entry.path, entry.name)))
  .filter((page) => !page.startsWith('public/'))
  .sort();

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
const troubles = [];
const headings = new Map();
const links = [];

async function open(context, page) {
  const tab = await context.newPage();
  const say = (what) => troubles.push(`${page}: ${what}`);
  tab.on('console', (message) => message.type() === 'error' && say(`console: ${message.text()}`));
  tab.on('pageerror', (error) => say(`script: ${error.message}`));
  tab.on('requestfailed', (request) => say(`request failed: ${request.url()} ${request.failure()?.errorText}`));
  tab.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.hostname !== '127.0.0.1') say(`asks another host: ${url.hostname}`);
  });
  tab.on('response', (response) => response.status() >= 400 && say(`${response.status()}: ${response.url()}`));
  await tab.goto(root + page, { waitUntil: page.startsWith('api/') ? 'load' : 'networkidle' });
  return { tab, say };
}

const width = (tab) => tab.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

async function look(context, page) {
  const { tab, say } = await open(context, page);
  // MathJax comes after the page; where it has nothing to do there is nothing to wait for.
  await tab
    .waitForFunction(() => {
      const formulas = document.querySelectorAll('article .math');
      return [...formulas].every((formula) => formula.querySelector('mjx-container'));
    }, null, { timeout: 20000 })
    .catch(() => say('formulas are not drawn'));
  await tab.setViewportSize(telephone);
  const wide = await width(tab);
  if (wide > 0) say(`${wide} pixels wider than a telephone`);
  await tab.setViewportSize(desktop);
  const wider = await width(tab);
  if (wider > 0) say(`${wider} pixels wider than a desktop window`);
  const seen = await tab.evaluate(() => ({
    // Formulas that were not drawn are still text between dollars, or MathJax says so in red.
    raw: [...document.querySelectorAll('article p, article td, article li')]
      .filter((element) => !element.querySelector('code, pre'))
      .map((element) => element.innerText)
      .filter((text) => /\$\$|\\frac|\\mu/.test(text))
      .slice(0, 2),
    broken: document.querySelectorAll('mjx-merror').length,
    pictures: [...document.querySelectorAll('article img')].filter((image) => !image.naturalWidth).length,
    ids: [...document.querySelectorAll('[id]')].map((element) => element.id),
    links: [...document.querySelectorAll('article a[href]')].map((link) => link.href),
  }));
  for (const text of seen.raw) say(`formula left as text: ${text.slice(0, 80)}`);
  if (seen.broken) say(`${seen.broken} broken formulas`);
  if (seen.pictures) say(`${seen.pictures} pictures not shown`);
  headings.set(page, new Set(seen.ids));
  links.push(...seen.links.filter((link) => link.startsWith(root)).map((link) => [page, link]));
  await tab.close();
}

async function search(context) {
  const { tab, say } = await open(context, 'index.html');
  const menu = tab.locator('button[data-bs-target="#navpanel"]');
  if (await menu.isVisible()) await menu.click();
  await tab.fill('#search-query', 'quarter turn');
  const hit = tab.locator('#search-results .sr-item a', { hasText: /quarter turn/i }).first();
  await hit.waitFor({ timeout: 20000 }).catch(() => say('the search does not find "quarter turn"'));
  await tab.close();
}

async function photograph() {
  await mkdir(shots, { recursive: true });
  for (const [name, viewport] of Object.entries({ telephone, desktop })) {
    const context = await browser.newContext({ viewport });
    for (const page of wanted) {
      const { tab } = await open(context, page);
      await tab.screenshot({ path: join(shots, `${page.replaceAll('/', '-')}-${name}.png`) });
      await tab.close();
    }
    await context.close();
  }
}

function follow() {
  for (const [page, link] of links) {
    const url = new URL(link);
    let target = decodeURIComponent(url.pathname.slice(1));
    if (target === '' || target.endsWith('/')) target += 'index.html';
    const ids = headings.get(target);
    const place = decodeURIComponent(url.hash.slice(1));
    if (!pages.includes(target) && target.endsWith('.html') && !target.endsWith('toc.html')) troubles.push(`${page}: no page ${target}`);
    else if (ids && place && !place.startsWith(':~:') && !ids.has(place)) {
      troubles.push(`${page}: ${target} has no #${place}`);
    }
  }
}

if (option === '--shots') {
  await photograph();
} else {
  const large = await browser.newContext({ viewport: desktop });
  await search(large).catch((error) => troubles.push(`search: ${error.message}`));
  await large.close();
  const context = await browser.newContext({ viewport: telephone });
  await search(context).catch((error) => troubles.push(`search on a telephone: ${error.message}`));
  const queue = pages.filter((page) => option !== '--only' || rest.some((begin) => page.startsWith(begin)));
  await Promise.all(
    Array.from({ length: 4 }, async () => {
      for (let page = queue.shift(); page; page = queue.shift()) {
        await look(context, page).catch((error) => troubles.push(`${page}: ${error.message}`));
      }
    }),
  );
  follow();
}

await browser.close();
server.close();
for (const trouble of [...new Set(troubles)]) console.error(trouble);
console.log(`${pages.length} pages, ${links.length} links, ${troubles.length} troubles`);
process.exitCode = troubles.length > 0 || pages.length < 50 ? 1 : 0;
