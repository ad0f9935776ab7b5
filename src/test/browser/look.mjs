// Opens pages that Throwline wrote as a telephone, a laptop and a printer show them, with scripts of the pages off, takes
// pictures and looks for faults. Arguments: folder for the pictures, then the pages. Ends with 1 where a fault was found.
import {createRequire} from 'node:module';
import {readFileSync, mkdirSync} from 'node:fs';
import {basename, resolve} from 'node:path';
import {pathToFileURL} from 'node:url';
import {chromium} from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const [pictures, ...pages] = process.argv.slice(2);
const views = [
  {name: 'telephone', width: 360, height: 740, deviceScaleFactor: 2},
  {name: 'laptop', width: 1366, height: 768, deviceScaleFactor: 1},
  {name: 'print', width: 718, height: 1000, deviceScaleFactor: 1, media: 'print'},
];
const faults = [];

/** Runs in the page: what is wider than the window, cut, covered, or broken inside a word. */
function layoutFaults() {
  const found = [];
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth) {
    found.push(`scrolls sideways: ${root.scrollWidth} > ${root.clientWidth}`);
  }
  const visible = e => e.checkVisibility({visibilityProperty: true});
  for (const e of document.querySelectorAll('body *')) {
    if (!visible(e) || e.closest('svg')) continue;
    const box = e.getBoundingClientRect();
    if (box.right > root.clientWidth + 1 || box.left < -1) {
      found.push(`leaves the page: ${e.tagName} ${e.textContent.slice(0, 40)}`);
    }
    if (e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && getComputedStyle(e).display !== 'inline') {
      found.push(`text is cut: ${e.tagName} ${e.textContent.slice(0, 40)}`);
    }
  }
  const boxes = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || !visible(parent) || parent.closest('style,title,desc')) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
      if (box.width > 1 && box.height > 1) boxes.push({box, text: node.data.trim().slice(0, 40)});
    }
    for (const word of node.data.matchAll(/[^\s/\u2013-]+/g)) {
      range.setStart(node, word.index);
      range.setEnd(node, word.index + word[0].length);
      const lines = [...range.getClientRects()].filter(box => box.width > 1);
      if (lines.some(line => line.top > lines[0].bottom - 1)) found.push(`"${word[0]}" is broken over two lines`);
    }
  }
  boxes.sort((a, b) => a.box.top - b.box.top);
  for (let i = 0; i < boxes.length; i++) {
    for (let j = i + 1; j < boxes.length && boxes[j].box.top < boxes[i].box.bottom; j++) {
      const a = boxes[i].box;
      const b = boxes[j].box;
      const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (wide > 2 && high > 0.35 * Math.min(a.height, b.height)) {
        found.push(`"${boxes[i].text}" and "${boxes[j].text}" cover each other`);
      }
    }
  }
  for (const svg of document.querySelectorAll('figure svg')) {
    if (!visible(svg)) continue;
    const frame = svg.getBoundingClientRect();
    for (const text of svg.querySelectorAll('text')) {
      const box = text.getBoundingClientRect();
      if (box.left < frame.left - 1 || box.right > frame.right + 1) found.push(`chart cuts "${text.textContent}"`);
    }
  }
  return found;
}

mkdirSync(pictures, {recursive: true});
const browser = await chromium.launch({
  executablePath: process.env.THROWLINE_CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
    '--disable-component-update', '--disable-sync'],
});
for (const file of pages) {
  for (const view of views) {
    const name = `${basename(file, '.html')}-${view.name}`;
    const say = what => faults.push(`${name}: ${what}`);
    const context = await browser.newContext({
      viewport: {width: view.width, height: view.height},
      deviceScaleFactor: view.deviceScaleFactor,
      offline: true,
      javaScriptEnabled: true,
    });
    const page = await context.newPage();
    page.on('console', message => say(`console: ${message.text()}`));
    page.on('pageerror', error => say(`error: ${error.message}`));
    page.on('request', request => {
      if (!/^(file|data):/.test(request.url())) say(`asks for ${request.url()}`);
    });
    if (view.media) await page.emulateMedia({media: view.media});
    await page.goto(pathToFileURL(resolve(file)).href);
    if (await page.locator('script').count()) say('holds a script');
    for (const fault of await page.evaluate(layoutFaults)) say(fault);
    await photograph(page, `${pictures}/${name}.png`);
    if (!view.media) {
      await page.evaluate(() => document.querySelectorAll('details').forEach(d => (d.open = true)));
      for (const fault of await page.evaluate(layoutFaults)) say(`all open: ${fault}`);
      await photograph(page, `${pictures}/${name}-open.png`);
      await page.addScriptTag({content: axe});
      const result = await page.evaluate(() => axe.run(document, {resultTypes: ['violations']}));
      for (const v of result.violations) {
        say(`axe: ${v.id}: ${v.help}: ${v.nodes.length} places, first ${v.nodes[0].html.slice(0, 160)}`);
      }
    } else {
      await page.pdf({path: `${pictures}/${name}.pdf`, format: 'A4'});
    }
    await context.close();
  }
}
await browser.close();
faults.forEach(fault => console.error(fault));
console.log(`${pages.length} pages, ${faults.length} faults, pictures in ${pictures}`);
process.exit(faults.length ? 1 : 0);

/** A picture of the whole page. The browser now and then cannot take one of a long page; it is asked again, three times. */
async function photograph(page, path) {
  for (let left = 3; ; left--) {
    try {
      return await page.screenshot({path, fullPage: true, timeout: 180_000});
    } catch (fault) {
      if (left === 0) throw fault;
    }
  }
}
