// Plays the cases of a folder that main.go made, in a player of QTI 3.0 in a browser without a window:
//   CHROMIUM=... node play.mjs FOLDER MODULES [PICTURES]
// MODULES is a node_modules folder with @citolab/qti-components and puppeteer-core; into PICTURES go pictures of some items.
import http from 'node:http'; import fs from 'node:fs'; import path from 'node:path'; import { createRequire } from 'node:module'; import { pathToFileURL } from 'node:url';
const [, , folder, modules, pictures] = process.argv;
const require = createRequire(path.join(path.resolve(modules), 'x.js'));
const puppeteer = (await import(pathToFileURL(require.resolve('puppeteer-core')))).default;
const types = { '.js': 'text/javascript', '.xml': 'application/xml', '.svg': 'image/svg+xml' };
const server = http.createServer((q, r) => {
  const url = decodeURIComponent(q.url.split('?')[0]);
  if (url.endsWith('/play')) {
    r.setHeader('content-type', 'text/html');
    return r.end('<!doctype html><meta charset=utf-8><body style="font-family:sans-serif;max-width:800px;margin:20px"><script type=module src="/modules/@citolab/qti-components/cdn/index.js"></script><qti-item><item-container></item-container></qti-item>');
  }
  const file = url.startsWith('/modules/') ? path.join(modules, url.slice(8)) : path.join(folder, url);
  try { const d = fs.readFileSync(file); r.setHeader('content-type', types[path.extname(file)] || 'text/plain'); r.end(d); } catch { r.statusCode = 404; r.end(); }
}).listen(0, '127.0.0.1');
await new Promise(k => server.once('listening', k));
const base = `http://127.0.0.1:${server.address().port}/`;
const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM, args: ['--no-sandbox'] });
const page = await browser.newPage(); await page.setViewport({ width: 860, height: 1000 });
const errors = []; page.on('pageerror', e => errors.push(e.message));
page.on('console', m => { if (m.type() === 'error' && !m.text().includes('404')) errors.push(m.text()); });
const cases = JSON.parse(fs.readFileSync(path.join(folder, 'cases.json')));
let answers = 0, faults = 0, last = '', played = 0, noPicture = 0;
const counts = {};
for (const c of cases) {
  if (c.Item !== last) { await page.goto(base + path.dirname(c.Item) + '/play'); last = c.Item; }
  await page.evaluate(name => { const c = document.querySelector('item-container'), root = c.shadowRoot || c; root.querySelector('qti-assessment-item')?.remove(); c.setAttribute('item-url', name); }, '/' + c.Item + '?' + played);
  await page.waitForFunction(n => { const c = document.querySelector('item-container'), root = c.shadowRoot || c; const i = root.querySelectorAll('qti-text-entry-interaction'); return i.length === n && i[n - 1].shadowRoot?.querySelector('input') && root.querySelector('qti-assessment-item')?.getOutcome?.('SCORE'); }, { timeout: 20000 }, c.Answer);
  const got = await page.evaluate(async typed => {
    const c = document.querySelector('item-container'), root = c.shadowRoot || c, item = root.querySelector('qti-assessment-item');
    for (const [id, v] of Object.entries(typed)) {
      const input = root.querySelector(`qti-text-entry-interaction[response-identifier="${id}"]`).shadowRoot.querySelector('input');
      input.value = v; input.dispatchEvent(new Event('change', { bubbles: true, composed: true }));
    }
    item.processResponse(true);
    await new Promise(r => setTimeout(r, 150));
    const shown = {};
    for (const b of root.querySelectorAll('qti-feedback-block')) if (b.getBoundingClientRect().height > 0) { const id = b.getAttribute('outcome-identifier').slice(9); shown[id] = (shown[id] || '') + b.innerText.trim().replace(/\s+/g, ' '); }
    const img = root.querySelector('img'), seen = img && await img.decode().then(() => img.naturalWidth > 0, () => false);
    return { score: Number(item.getOutcome('SCORE').value), shown, picture: seen };
  }, c.Typed);
  played++; if (!got.picture) noPicture++;
  const bad = [];
  if (got.score !== c.Score) bad.push(`score ${got.score}, not ${c.Score}`);
  for (const id of new Set([...Object.keys(got.shown), ...Object.keys(c.Shown)])) {
    answers++;
    const want = (c.Shown[id] || '').replace(/\s+/g, ' '), has = got.shown[id] || '';
    if (want === '' ? has !== '' : !has.startsWith(want)) bad.push(`${id} ${c.Typed[id]}: "${has}", not "${want}"`);
  }
  counts[c.Kind] = (counts[c.Kind] || 0) + Object.keys(c.Typed).length;
  faults += bad.length; for (const b of bad.slice(0, 3)) console.log(c.Item, c.Kind, b);
  if (pictures && c.Kind === 'wrong 1') { fs.mkdirSync(pictures, { recursive: true }); await page.screenshot({ path: path.join(pictures, path.basename(c.Item, '.xml') + '.png'), fullPage: true }); }
}
console.log(`${played} times an item was played, ${answers} answers looked at, ${faults} faults; pictures missing ${noPicture}; errors on the page ${errors.length}`);
console.log('typed:', JSON.stringify(counts)); for (const e of errors.slice(0, 5)) console.log('error:', e);
const typedComma = await page.evaluateHandle(() => { const c = document.querySelector('item-container'), root = c.shadowRoot || c; return root.querySelector('qti-text-entry-interaction').shadowRoot.querySelector('input'); });
await page.evaluate(e => { e.value = ''; e.focus(); }, typedComma); await page.keyboard.type('12,5');
console.log('a comma typed:', await page.evaluate(e => { const host = e.getRootNode().host; host.validate(); return `valid ${e.checkValidity()}, said "${e.validationMessage}", read as ${parseFloat(host.value)}`; }, typedComma));
await page.evaluate(e => { e.value = ''; e.focus(); }, typedComma); await page.keyboard.type('-12.5');
console.log('a point typed:', await page.evaluate(e => { const host = e.getRootNode().host; host.validate(); return `valid ${e.checkValidity()}`; }, typedComma));
await browser.close(); server.close(); process.exit(faults || noPicture || errors.length ? 1 : 0);
