// What looks for bad layout finds it: a page with a fault of each kind.
import assert from 'node:assert/strict';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { seriousFaults } from './accessibility.mjs';
import { desk, foreignRequests, openBrowser, openFile, screenshots } from './browser.mjs';
import { layoutFaults, paperFaults } from './layout.mjs';

const picture = (inside) =>
  `<figure><svg role="img" viewBox="0 0 100 100" width="100"><title>map</title>${inside}</svg></figure>`;
const pages = {
  'overlap: "one" and "two"': '<p style="margin:0">one</p><p style="margin:-1.1em 0 0">two</p>',
  'cut off: "a long line"': '<div style="width:2em;overflow:hidden;white-space:nowrap"><p>a long line</p></div>',
  'cut off: "far out"': picture('<text x="90" y="50">far out</text>'),
  'drawn outside its frame: "map"': picture('<rect x="60" width="60" height="9"/>'),
  'the page is 600 pixels wider than the screen': '<div style="width:2000px;margin:-8px">wide</div>',
};
const paperPages = {
  'may be divided by a page break: map': picture('<rect width="9" height="9"/>'),
  'higher than a page: map': '<figure style="height:2000px"><svg role="img" width="9"><title>map</title></svg></figure>',
};

describe('the search for bad layout', () => {
  let browser;
  before(async () => {
    mkdirSync(screenshots, { recursive: true });
    browser = await openBrowser();
  });
  after(() => browser?.close());

  async function open(body) {
    const file = join(screenshots, 'faulty.html');
    writeFileSync(file, `<!DOCTYPE html><html><meta charset="utf-8"><body>${body}</body></html>`);
    return openFile(browser, file, desk);
  }

  for (const [fault, body] of Object.entries(pages)) {
    it(fault, async () => assert.ok((await layoutFaults((await open(body)).page)).includes(fault)));
  }
  for (const [fault, body] of Object.entries(paperPages)) {
    it(`on paper: ${fault}`, async () => assert.ok((await paperFaults((await open(body)).page)).includes(fault)));
  }
  it('errors, requests and what axe calls serious', async () => {
    const { page, seen, url } = await open('<script>console.error("oh")</script><img src="other.png"><input>');
    assert.ok(seen.errors.includes('oh'));
    assert.equal(foreignRequests(seen, url).length, 1);
    assert.ok((await seriousFaults(page)).some((fault) => fault.startsWith('label: ')));
  });
});
