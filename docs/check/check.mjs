// Opens the built site in a headless browser, as a telephone and as a desktop would show it: every article, and a sample of
// the generated API pages (all of them with --all). What needs no browser is read from the files of every page: links, and
// formulas that the page's writer missed.
// Usage: node check.mjs SITE [--all | --only BEGINNING... | --shots FOLDER PAGE...]; names of pages begin with one of those given.
// Fails where a request fails or goes to another host, a page writes an error, the search finds nothing, a page is
// wider than a telephone, a formula stays as text, or a link leads to no page or no heading of the site.
import { chromium } from 'playwright-core';
import { availableParallelism } from 'node:os';
import { mkdir, readdir, readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { readPage } from './reading.mjs';
import { sample } from './sample.mjs';
import { serve } from './serving.mjs';

const [site, option, ...rest] = process.argv.slice(2);
if (!site) throw new Error('usage: node check.mjs SITE [--all | --only BEGINNING... | --shots FOLDER PAGE...]');

const telephone = { width: 390, height: 844 };
const desktop = { width: 1280, height: 800 };
const fewestPages = 50;

const names = (await readdir(site, { recursive: true, withFileTypes: true }))
  .filter((entry) => entry.isFile())
  .map((entry) => relative(site, join(entry.parentPath ?? entry.path, entry.name)));
const files = new Set(names);
const pages = names.filter((name) => name.endsWith('.html') && !name.endsWith('toc.html') && !name.startsWith('public/')).sort();

const troubles = [];
const { root, close } = await serve(site);
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

/** Lets a tab tell what goes wrong on the page that it shows. */
function listen(tab, say) {
  tab.on('console', (message) => message.type() === 'error' && say(`console: ${message.text()}`));
  tab.on('pageerror', (error) => say(`script: ${error.message}`));
  tab.on('requestfailed', (request) => {
    // What a page still asked for when the tab went on to the next one.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') say(`request failed: ${request.url()} ${request.failure()?.errorText}`);
  });
  tab.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.hostname !== '127.0.0.1') say(`asks another host: ${url.hostname}`);
  });
  tab.on('response', (response) => response.status() >= 400 && say(`${response.status()}: ${response.url()}`));
}

/** MathJax comes after the page; where it has nothing to do there is nothing to wait for. */
const drawn = (tab) =>
  tab.waitForFunction(
    () => [...document.querySelectorAll('article .math')].every((formula) => formula.querySelector('mjx-container')),
    null,
    { timeout: 60000 },
  );

const width = (tab) => tab.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

async function look(tab, page, say) {
  await tab.setViewportSize(telephone);
  await tab.goto(root + page, { waitUntil: 'load' });
  await drawn(tab).catch(() => say('formulas are not drawn'));
  const wide = await width(tab);
  if (wide > 0) say(`${wide} pixels wider than a telephone`);
  await tab.setViewportSize(desktop);
  const wider = await width(tab);
  if (wider > 0) say(`${wider} pixels wider than a desktop window`);
  const seen = await tab.evaluate(async () => {
    // A picture further down is asked for only when it comes into sight: ask for all now.
    const pictures = [...document.querySelectorAll('article img')].map(async (image) => {
      image.loading = 'eager';
      return image.decode().then(() => 0, () => 1);
    });
    const missing = (await Promise.all(pictures)).filter((one) => one === 1).length;
    return { missing, broken: document.querySelectorAll('mjx-merror').length };
  });
  if (seen.broken) say(`${seen.broken} broken formulas`);
  if (seen.missing) say(`${seen.missing} pictures not shown`);
}

/** Several tabs, each with a page of its own until none is left. */
async function lookAtAll(queue) {
  const context = await browser.newContext({ viewport: telephone });
  await Promise.all(
    Array.from({ length: 2 * availableParallelism() }, async () => {
      const tab = await context.newPage();
      let page;
      const say = (what) => troubles.push(`${page}: ${what}`);
      listen(tab, say);
      for (page = queue.shift(); page; page = queue.shift()) {
        await look(tab, page, say).catch((error) => say(error.message));
      }
      await tab.close();
    }),
  );
  await context.close();
}

async function search(viewport) {
  const context = await browser.newContext({ viewport });
  const tab = await context.newPage();
  const say = (what) => troubles.push(`search, ${viewport.width} pixels wide: ${what}`);
  listen(tab, say);
  await tab.goto(root, { waitUntil: 'networkidle' });
  const menu = tab.locator('button[data-bs-target="#navpanel"]');
  if (await menu.isVisible()) await menu.click();
  await tab.fill('#search-query', 'quarter turn');
  const hit = tab.locator('#search-results .sr-item a', { hasText: /quarter turn/i }).first();
  await hit.waitFor({ timeout: 20000 }).catch(() => say('does not find "quarter turn"'));
  await context.close();
}

async function photograph(folder, wanted) {
  await mkdir(folder, { recursive: true });
  for (const [name, viewport] of Object.entries({ telephone, desktop })) {
    const context = await browser.newContext({ viewport });
    for (const page of wanted) {
      const tab = await context.newPage();
      await tab.goto(root + page, { waitUntil: 'networkidle' });
      await drawn(tab);
      await tab.screenshot({ path: join(folder, `${page.replaceAll('/', '-')}-${name}.png`), fullPage: process.env.FULL === '1' });
      await tab.close();
    }
    await context.close();
  }
}

/** Formulas left as text, and links that lead nowhere. Returns the number of links. */
function follow(read) {
  let count = 0;
  for (const [page, { formulas, links }] of read) {
    for (const text of formulas) troubles.push(`${page}: formula left as text: ${text}`);
    for (const link of links) {
      const url = new URL(link, root + page);
      if (!url.href.startsWith(root)) continue;
      count++;
      let target = decodeURIComponent(url.pathname.slice(1));
      if (target === '' || target.endsWith('/')) target += 'index.html';
      const place = decodeURIComponent(url.hash.slice(1));
      if (!files.has(target)) troubles.push(`${page}: there is no ${target}`);
      else if (place && read.has(target) && !read.get(target).ids.has(place)) troubles.push(`${page}: ${target} has no #${place}`);
    }
  }
  return count;
}

function wanted(read) {
  if (option === '--all') return pages;
  if (option === '--only') return pages.filter((page) => rest.some((start) => page.startsWith(start)));
  return sample(pages, (page) => read.get(page).longestName);
}

if (option === '--shots') {
  await photograph(rest[0], rest.slice(1));
} else {
  const read = new Map();
  for (const page of pages) read.set(page, readPage(await readFile(join(site, page), 'utf8')));
  const links = follow(read);
  for (const viewport of [desktop, telephone]) await search(viewport).catch((error) => troubles.push(`search: ${error.message}`));
  const open = wanted(read);
  await lookAtAll([...open]);
  for (const trouble of new Set(troubles)) console.error(trouble);
  console.log(`${pages.length} pages read, ${links} links followed, ${open.length} pages opened, ${troubles.length} troubles`);
  process.exitCode = troubles.length > 0 || pages.length < fewestPages || open.length === 0 ? 1 : 0;
}

await browser.close();
close();
