// The page as a user meets it: each step clicked and typed through, on a telephone and on a desk. Times are printed.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { seriousFaults } from './accessibility.mjs';
import {
  desk, downloads, firefox, foreignRequests, openBrowser, openFile, openFirefox, screenshot, screenshots, telephone,
} from './browser.mjs';
import { hostileCourse, hostilePlayer } from './hostile.mjs';
import { layoutFaults, paperFaults } from './layout.mjs';
import { answered, patience, settled, until } from './waiting.mjs';

const file = process.env.YARDWORTH_PAGE;
const droppedFiles = resolve(screenshots, 'dropped');

const textOf = (page, selector) => page.$eval(selector, (element) => element.textContent);

async function goTo(page, step) {
  await page.click(`nav a[href="#${step}"]`);
  await until(page, (name) => document.activeElement?.id === `${name}-title`, step);
}

// As a finger moves a slider.
async function slide(page, selector, value) {
  await page.$eval(selector, (range, to) => {
    range.value = String(to);
    range.dispatchEvent(new Event('input', { bubbles: true }));
  }, value);
}

async function type(page, selector, words) {
  await page.click(selector, { count: 3 });
  await page.keyboard.type(words);
}

// The content of an editor, whose tree is its own.
const editor = (host) => `#${host} >>> .cm-content`;

async function typeInEditor(page, host, words) {
  await (await page.waitForSelector(editor(host))).focus();
  await page.keyboard.down('Control');
  await page.keyboard.press('Home');
  await page.keyboard.up('Control');
  await page.keyboard.type(words);
}

async function drop(page, ...paths) {
  await (await page.$('#files')).uploadFile(...paths);
}

// Where the hazard in hand has its grip on the screen, once the drawing says that it lies where it should.
async function gripOf(page, words = '') {
  await until(page, (said) => {
    const told = document.querySelector('#hazard-place').textContent;
    const grip = document.querySelector('#hazard-map').shadowRoot?.querySelector('[data-held] circle');
    return grip && told !== '' && (said === '' || told !== said);
  }, words);
  return page.$eval('#hazard-map', (map) => {
    const grip = map.shadowRoot.querySelector('[data-held] circle');
    grip.scrollIntoView({ block: 'center' });
    const box = grip.getBoundingClientRect();
    return { x: box.left + box.width / 2, y: box.top + box.height / 2, top: map.getBoundingClientRect().top };
  });
}

async function chooseHazard(page, hole, hazard) {
  await page.select('#hazard-hole', String(hole));
  await page.select('#hazard', String(hazard));
  await until(page, (number) => {
    const held = document.querySelector('#hazard-map').shadowRoot?.querySelector('[data-held]');
    return held?.dataset.held === number;
  }, String(hazard));
}

// With a mouse, in steps as a hand makes them. Returns how far the grip went.
async function dragHazard(page, right, down) {
  const said = await textOf(page, '#hazard-place');
  const before = await gripOf(page);
  await page.mouse.move(before.x, before.y);
  await page.mouse.down();
  await page.mouse.move(before.x + right, before.y + down, { steps: 8 });
  await page.mouse.up();
  await settledHazard(page);
  const after = await gripOf(page, said);
  return { right: after.x - before.x, down: after.y - after.top - (before.y - before.top) };
}

// Nothing of the hazard is being drawn or worked out.
async function settledHazard(page) {
  await answered(page, '#hazard-result');
  await until(page, () => {
    const place = document.querySelector('#hazard-place').textContent;
    return document.querySelector('#hazard-map').getAttribute('aria-valuetext') === place;
  });
}

function tell(words) {
  console.log(`    ${words}`);
}

async function openPage(browser, size, dark = false) {
  const opened = await openFile(browser, file, size, dark);
  opened.page.on('dialog', (dialog) => dialog.accept());
  await answered(opened.page, '#round-result');
  return opened;
}

async function check(opened, name, withAxe = true) {
  const { page, seen, url } = opened;
  await screenshot(page, `page/${name}`);
  assert.deepEqual(seen.errors, []);
  assert.deepEqual(foreignRequests(seen, url), []);
  assert.deepEqual(await layoutFaults(page), []);
  if (withAxe) assert.deepEqual(await seriousFaults(page), []);
}

// What a user does on each step; with the name of the size for pictures.
const steps = {
  async who(page) {
    await page.select('#player', '12-woman.yaml');
    await until(page, () => document.querySelector('#player-understood').textContent.includes('captain 12'));
    await page.click('#course-details > summary');
    await typeInEditor(page, 'course-editor', 'holez: 3\n');
    await until(page, () => document.querySelector('#course-findings').textContent.includes('holez'));
    await page.select('#course-choice', 'marsh-end.yaml');
    await until(page, () => document.querySelector('#course-understood').textContent.includes('Marsh End'));
    await page.click('#course-details > summary');
    await page.select('#course-choice', 'heron-ferry.yaml');
    await until(page, () => document.querySelector('#course-understood').textContent.includes('Heron Ferry'));
    await page.select('#tee', 'forward');
    await answered(page, '#round-result');
    await until(page, () => document.querySelector('#round-result').textContent.includes('forward tees'));
  },
  async form(page) {
    await page.click('#player-details > summary');
    await type(page, '#form-label', 'evening 20');
    await type(page, '#form-index', '20,4');
    await type(page, '#form-carry-0', '180');
    await type(page, '#form-carry-6', '120');
    await page.click('#form-player');
    await until(page, () => document.querySelector('#player-findings').textContent.includes('20.4'));
    await type(page, '#form-index', '20.4');
    await page.click('#form-player');
    await until(page, () => document.querySelector('#player-understood').textContent.includes('evening 20'));
    await page.click('#player-details > summary');
    await page.select('#player', 'weekend-16-man.yaml');
    await until(page, () => document.querySelector('#player-understood').textContent.includes('weekend 16'));
  },
  async bay(page) {
    await page.select('#logs', 'weekend-16');
    await answered(page, '#bag-result');
    await page.select('#logs', '');
    for (const carry of ['180', '185', '191', '178', '183']) {
      await type(page, '#strike-carry', carry);
      await type(page, '#strike-offline', '-4');
      await page.click('#strike-add');
    }
    await until(page, () => document.querySelector('#bag-result').textContent.includes('5 shots'));
    await page.select('#logs', 'weekend-16');
    const earlier = await textOf(page, '#delivery-result .lead');
    await page.click('#strike-keep');
    await slide(page, '#attack_deg', 3);
    await answered(page, '#delivery-result', earlier);
  },
  async course(page) {
    let earlier = await textOf(page, '#round-result .lead');
    await slide(page, '#driver', 30);
    await answered(page, '#round-result', earlier);
    earlier = await textOf(page, '#round-result .lead');
    await type(page, '#irons-number', '9');
    await answered(page, '#round-result', earlier);
    await page.select('#hole', '11');
    await until(page, () => document.querySelector('#hole-result .picture').shadowRoot.textContent.includes('Hole 11'));
    // The sliders stay in sight beside the hole that follows them.
    await page.$eval('#hole-result .picture', (picture) => picture.scrollIntoView({ block: 'start' }));
    assert.ok(await page.$eval('#driver', (range) => range.getBoundingClientRect().top >= 0));
    await until(page, () => [...document.querySelectorAll('#maps button > div')].every((map) => map.shadowRoot));
    await goTo(page, 'bay');
    await page.select('#logs', 'weekend-16');
    await goTo(page, 'course');
    earlier = await textOf(page, '#round-result .lead');
    await page.click('input[name=change][value=logs]');
    await answered(page, '#round-result', earlier);
    await page.click('#sure');
    await until(page, () => document.querySelector('#sure-words').textContent.includes('As sure as the shots make it'));
    earlier = await textOf(page, '#round-result .lead');
    await page.click('input[name=change][value=strike]');
    await answered(page, '#round-result', earlier);
    await page.click('input[name=change][value=said]');
  },
  async worth(page) {
    await type(page, '#stroke-worth', '20');
    await page.click('#weigh');
    await answered(page, '#weigh-result');
  },
  async club(page) {
    await page.select('#band-tee', 'middle');
    await page.click('#bands');
    await answered(page, '#bands-result');
    await chooseHazard(page, 4, 2);
    await page.$eval('#hazard-map', (map) => map.scrollIntoView({ block: 'center' }));
    const gone = await dragHazard(page, -20, 30);
    assert.ok(Math.abs(gone.right + 20) < 3 && Math.abs(gone.down - 30) < 3, JSON.stringify(gone));
    const lead = await textOf(page, '#hazard-result .lead');
    assert.match(lead, /^Moving the bunker .* on hole 4 /);
    await slide(page, '#hazard-from', 220);
    await until(page, () => document.querySelector('#hazard-place').textContent.includes('bunker, 220 to 240 yards'));
    await answered(page, '#hazard-result', lead);
  },
  async take(page) {
    await page.click('#save-copy');
    await until(page, () => document.querySelector('#taken').textContent.includes('saved'));
  },
};

function emptyDownloads() {
  rmSync(downloads, { recursive: true, force: true });
  mkdirSync(downloads, { recursive: true });
}

// The file that was saved, whole.
async function saved(ending) {
  for (let waited = 0; waited < patience; waited += 50) {
    const names = readdirSync(downloads, { withFileTypes: true }).filter((entry) => entry.name.endsWith(ending));
    if (names.length > 0) return join(downloads, names[0].name);
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error('nothing was saved');
}

// A picture, an archive, brackets as far as a file may reach, and names that are script; the last two are valid.
function hostileFiles() {
  const pixel = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
  const archive = Buffer.concat([Buffer.from('PK\x03\x04'), Buffer.alloc(100000, 7), Buffer.from('PK\x05\x06')]);
  return {
    'picture.png': Buffer.from(pixel, 'base64'),
    'archive.zip': archive,
    'brackets.yaml': '['.repeat(4 * 1024 * 1024),
    'course-of-brackets.yaml': `format: yardworth/course/1\nholes: ${'['.repeat(4 * 1024 * 1024 - 40)}`,
    'course<img src=x onerror=alert(1)>.yaml': hostileCourse(),
    'player.yaml': hostilePlayer(),
  };
}

const skip = file ? false : 'no page was given';

describe('page', { skip }, () => {
  let browser;
  before(async () => {
    mkdirSync(droppedFiles, { recursive: true });
    browser = await openBrowser();
  });
  after(() => browser?.close());

  for (const [name, size] of Object.entries({ telephone, desk })) {
    for (const [step, act] of Object.entries(steps)) {
      it(`${step}, ${name}`, async () => {
        const opened = await openPage(browser, size, step === 'bay');
        await goTo(opened.page, step === 'form' ? 'who' : step);
        await act(opened.page);
        await check(opened, `${step}-${name}`);
        await opened.page.close();
      });
    }
  }

  it('what was entered is there after a reload, and can be forgotten', async () => {
    const { page } = await openPage(browser, telephone);
    await page.select('#player', 'senior-20-man.yaml');
    await page.click('#course-details > summary');
    await typeInEditor(page, 'course-editor', '# my own\n');
    await goTo(page, 'course');
    await slide(page, '#driver', 11);
    let asked = false;
    page.once('dialog', (dialog) => { asked = dialog.type() === 'beforeunload'; });
    await page.reload();
    await until(page, () => document.querySelector('#player-understood').textContent.includes('senior 20'));
    assert.ok(asked, 'leaving with what is in no file asks');
    assert.equal(await page.$eval('#driver', (range) => range.value), '11');
    assert.ok((await textOf(page, '#course-editor >>> .cm-content')).startsWith('# my own'));
    await goTo(page, 'take');
    await page.click('#clear');
    await until(page, () => document.querySelector('#player').value === 'weekend-16-man.yaml');
    await page.close();
  });

  it('a copy of the page opens with the case inside', async () => {
    const { page } = await openPage(browser, telephone);
    await page.select('#player', 'junior.yaml');
    await answered(page, '#round-result', await textOf(page, '#round-result .lead'));
    await goTo(page, 'take');
    emptyDownloads();
    await page.click('#save-copy');
    const copy = await saved('.html');
    await page.close();
    const opened = await openFile(browser, copy, desk);
    await answered(opened.page, '#round-result');
    assert.ok((await textOf(opened.page, '#whose')).includes('junior'));
    await check(opened, 'copy-desk', false);
    await opened.page.close();
  });

  it('the lesson sheet is saved', async () => {
    const { page } = await openPage(browser, telephone);
    await goTo(page, 'take');
    emptyDownloads();
    await page.click('#save-sheet');
    const sheet = readFileSync(await saved('.html'), 'utf8');
    assert.ok(sheet.includes('The three holes where most is gained'));
    await page.close();
  });

  it('files that nobody should drop are refused, and the page goes on', async () => {
    const opened = await openPage(browser, desk);
    const { page, seen } = opened;
    for (const [name, bytes] of Object.entries(hostileFiles())) {
      const path = join(droppedFiles, name);
      writeFileSync(path, bytes);
      const started = Date.now();
      await drop(page, path);
      await until(page, (called) => {
        const told = document.querySelector('#dropped').textContent;
        return told.startsWith(called) && /taken|many/.test(told);
      }, name);
      tell(`${name}: ${Date.now() - started} ms`);
    }
    assert.deepEqual(seen.errors, []);
    await until(page, () => document.querySelector('#player-understood').textContent.includes('<script>'));
    await answered(page, '#round-result');
    await until(page, () => document.querySelector('#round-result').textContent.includes('<script>'));
    assert.equal(await page.title(), 'What is added distance worth?');
    await check(opened, 'hostile-desk');
    await page.close();
  });

  it('a worker that stops is replaced, and says why', async () => {
    const { page } = await openPage(browser, telephone);
    await goTo(page, 'course');
    const earlier = await textOf(page, '#round-result .lead');
    for (const worker of page.workers()) {
      await worker.evaluate(() => { setTimeout(() => { throw new Error('stopped for a test'); }); });
    }
    await until(page, () => document.querySelector('#trouble').textContent.includes('stopped for a test'));
    await slide(page, '#driver', 35);
    await answered(page, '#round-result', earlier);
    await page.close();
  });

  it('a slider that moves on is followed, and what nobody waits for any more is stopped', async () => {
    const { page } = await openPage(browser, desk);
    await settled(page);
    // The hole in view has answers while the finger still moves.
    const followed = await page.evaluate(async () => {
      const seen = new Set();
      const range = document.querySelector('#driver');
      for (let value = 21; value < 60; ++value) {
        range.value = String(value);
        range.dispatchEvent(new Event('input', { bubbles: true }));
        await new Promise((done) => setTimeout(done, 100));
        seen.add(document.querySelector('#hole-result .lead').textContent);
      }
      range.dispatchEvent(new Event('change', { bubbles: true }));
      return seen.size;
    });
    tell(`answers for the hole in view while a slider moved over 39 places: ${followed}`);
    assert.ok(followed > 3, `${followed} answers`);
    await until(page, () => document.querySelector('#round-result').getAttribute('aria-busy') !== 'true');
    await settled(page);
    // A round that is being worked out is left for a newer one.
    let started = 0;
    page.on('workercreated', () => { started += 1; });
    const earlier = await textOf(page, '#round-result .lead');
    await slide(page, '#driver', 15);
    await page.$eval('#driver', (range) => range.dispatchEvent(new Event('change', { bubbles: true })));
    await slide(page, '#driver', 5);
    await page.$eval('#driver', (range) => range.dispatchEvent(new Event('change', { bubbles: true })));
    await until(page, (old) => {
      const words = document.querySelector('#round-result .lead').textContent;
      return words !== old && /\b5 /.test(words);
    }, earlier);
    assert.ok(started >= 2, `${started} workers started`);
    assert.equal(await textOf(page, '#trouble'), '');
    await page.close();
  });

  it('by keyboard alone', async () => {
    const { page } = await openPage(browser, telephone);
    await page.keyboard.press('Tab');
    for (let step = 1; step < 3; ++step) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await until(page, () => document.activeElement?.id === 'course-title');
    const earlier = await textOf(page, '#round-result .lead');
    while (await page.evaluate(() => document.activeElement?.id !== 'driver')) await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowRight');
    await answered(page, '#round-result', earlier);
    assert.equal(await page.$eval('#driver', (range) => range.value), '21');
    await page.close();
  });

  it('hazards of any shape, by keys, and back', async () => {
    const opened = await openPage(browser, desk);
    const { page } = opened;
    const valueText = () => page.$eval('#hazard-map', (map) => map.getAttribute('aria-valuetext'));
    const told = (words) => until(page, (said) => {
      const map = document.querySelector('#hazard-map');
      return map.getAttribute('aria-valuetext') === said && document.querySelector('#hazard-place').textContent === said;
    }, words);
    await chooseHazard(page, 5, 1); // a polygon over the line of play
    await told('bunker, 214 to 232 yards along the hole, 6 left to 8 right of its line');
    await page.focus('#hazard-map');
    for (const key of ['PageUp', 'ArrowUp', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowLeft']) await page.keyboard.press(key);
    await told('bunker, 225 to 243 yards along the hole, 8 left to 6 right of its line');
    assert.equal(await page.$eval('#hazard-from-number', (number) => number.value), '225');
    assert.equal(await page.$eval('#hazard-right', (range) => range.value), '-1');
    await settledHazard(page);
    await dragHazard(page, 25, 0);
    assert.match(await valueText(), /right of its line$/);
    await page.reload();
    await until(page, () => document.querySelector('#hazard-hole').value === '5');
    await settledHazard(page);
    await page.click('#hazard-back');
    await told('bunker, 214 to 232 yards along the hole, 6 left to 8 right of its line');
    await until(page, () => document.querySelector('#hazard-result').hidden);
    // A strip over the line of play is one no more; water across the hole moves along it alone.
    await chooseHazard(page, 1, 1);
    await type(page, '#hazard-right-number', '2');
    await told('bunker, 226 to 244 yards along the hole, 4 left to 8 right of its line');
    await settledHazard(page);
    await chooseHazard(page, 1, 2);
    await told('penalty area, 338 to 352 yards along the hole, all across it');
    await page.focus('#hazard-map');
    for (const key of ['ArrowRight', 'ArrowDown']) await page.keyboard.press(key);
    await told('penalty area, 337 to 351 yards along the hole, all across it');
    // What nobody can move there is refused, in words, and it goes on.
    await type(page, '#hazard-from-number', '900');
    await until(page, () => document.querySelector('#hazard-place').textContent.includes('a hazard wholly off the hole'));
    await page.click('#hazard-back');
    await told('penalty area, 338 to 352 yards along the hole, all across it');
    await check(opened, 'hazards-desk', false);
    await page.close();
  });

  it('a bunker dragged by a finger', async () => {
    const opened = await openPage(browser, { ...telephone, hasTouch: true, isMobile: true });
    const { page } = opened;
    await goTo(page, 'club');
    await chooseHazard(page, 4, 2);
    const grip = await gripOf(page);
    const said = await textOf(page, '#hazard-place');
    const scrolled = await page.evaluate(() => window.scrollY);
    await page.touchscreen.touchStart(grip.x, grip.y);
    for (let step = 1; step <= 10; ++step) {
      await page.touchscreen.touchMove(grip.x - 2 * step, grip.y + 6 * step);
    }
    // It follows before it is let go.
    await until(page, (before) => document.querySelector('#hazard-place').textContent !== before, said);
    await page.touchscreen.touchEnd();
    await settledHazard(page);
    assert.equal(await page.evaluate(() => window.scrollY), scrolled, 'the page stays where it is');
    await check(opened, 'finger-telephone', false);
    // A tap picks another hazard.
    const at = await page.$eval('#hazard-map', (map) => {
      const bunker = map.shadowRoot.querySelector('[data-hazard="1"]');
      bunker.scrollIntoView({ block: 'center' });
      const box = bunker.getBoundingClientRect();
      return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    });
    await page.touchscreen.tap(at.x, at.y);
    await until(page, () => document.querySelector('#hazard').value === '1');
    await page.close();
  });

  it('what the bay found is an option, and so is a log by its name', async () => {
    const opened = await openPage(browser, telephone);
    const { page } = opened;
    await goTo(page, 'worth');
    await page.select('#option-change', 'logs');
    await page.click('#option-add');
    await until(page, () => document.querySelector('#option-added').textContent.includes('no logs before and after'));
    await goTo(page, 'who');
    const files = ['weekend-16-before.csv', 'weekend-16-after.csv'].map((name) => `courses/heron-ferry/bay/${name}`);
    await drop(page, ...files);
    await until(page, () => document.querySelector('#dropped').textContent.includes('taken as the shots after'));
    await goTo(page, 'worth');
    await type(page, '#option-money', '300');
    await type(page, '#option-hours', '12');
    await page.click('#option-add');
    await until(page, () => document.querySelector('#options-editor').shadowRoot.textContent.includes('what the bay measured'));
    await page.click('#weigh');
    await answered(page, '#weigh-result');
    assert.match(await textOf(page, '#weigh-result pre'), /what the bay measured/);
    await check(opened, 'bay-option-telephone');
    // An options file that names the same logs.
    await goTo(page, 'who');
    await drop(page, 'courses/heron-ferry/bay/options.yaml');
    await until(page, () => document.querySelector('#dropped').textContent.includes('taken as the options'));
    await goTo(page, 'worth');
    const earlier = await textOf(page, '#weigh-result .lead');
    await page.click('#weigh');
    await answered(page, '#weigh-result', earlier);
    assert.match(await textOf(page, '#weigh-result pre'), /lessons, as measured/);
    await page.close();
  });

  it('engines that nobody asks anything give their memory back, and start again', async () => {
    const { page } = await openPage(browser, desk);
    await goTo(page, 'course');
    const working = page.workers().length;
    for (let waited = 0; page.workers().length > 1 && waited < 60; ++waited) {
      await new Promise((done) => setTimeout(done, 500));
    }
    assert.ok(working > 1);
    assert.equal(page.workers().length, 1);
    const earlier = await textOf(page, '#round-result .lead');
    await slide(page, '#driver', 9);
    await answered(page, '#round-result', earlier);
    assert.equal(page.workers().length, working);
    await page.close();
  });

  it('on paper, in the dark, and at twice the size', async () => {
    const opened = await openPage(browser, { width: 700, height: 450 }, true);
    await goTo(opened.page, 'course');
    await check(opened, 'course-twice-dark');
    assert.deepEqual(await paperFaults(opened.page), []);
    await opened.page.emulateMediaType('print');
    await screenshot(opened.page, 'page/course-a4');
    await opened.page.close();
  });
});

// The same in Firefox, where it is installed, at one size: what Chromium alone lets a test do is not repeated.
const noFirefox = skip || (existsSync(firefox) ? false : 'there is no Firefox');

describe('page in Firefox', { skip: noFirefox }, () => {
  let browser;
  before(async () => { browser = await openFirefox(); });
  after(() => browser?.close());

  for (const step of ['who', 'form', 'bay', 'course', 'club']) {
    it(step, async () => {
      const opened = await openPage(browser, desk);
      await goTo(opened.page, step === 'form' ? 'who' : step);
      await steps[step](opened.page);
      await check(opened, `${step}-firefox`);
      await opened.page.close();
    });
  }
});
