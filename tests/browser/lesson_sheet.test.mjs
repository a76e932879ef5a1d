// The lesson sheet and the page for a club as a reader meets them: opened from disk, on a telephone, a tablet, a desk and
// on paper.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { seriousFaults } from './accessibility.mjs';
import { desk, foreignRequests, openBrowser, openFile, screenshot, screenshots, tablet, telephone } from './browser.mjs';
import { hostileCourse, hostilePlayer } from './hostile.mjs';
import { layoutFaults, paper, paperFaults } from './layout.mjs';

const program = process.env.YARDWORTH_PROGRAM;
const examples = 'courses/heron-ferry';
const folder = join(screenshots, 'sheets');

const weekend16 = ['--player', `${examples}/members/weekend-16-man.yaml`];
const logs = [`${examples}/bay/weekend-16-before.csv`, `${examples}/bay/weekend-16-after.csv`];
const sheets = {
  plain: [],
  everything: ['--to', '40', '--step', '10', '--control'],
  strike: ['--from-delivery', 'attack-deg=-3', 'dynamic-loft-deg=20', '--to', 'attack-deg=2', 'dynamic-loft-deg=15'],
  logs: [...weekend16, '--from-log', ...logs, '--skip-bad-rows', '--draws', '5'],
  lost: ['--driver', '-20', '--irons', '-6', '--plan', 'habit'],
  scorecard: ['--course', 'courses/bare-scorecard/course.yaml'],
  club: ['--bands', '--band', 'scratch', '--band', '21 and over', '--members', `${examples}/members.csv`],
  'club-hazard': ['--bands', '--tee', 'middle', '--add-hazard', '4:kind=bunker,side=left,from=230,to=245'],
};

function writeHostile() {
  const course = join(folder, 'hostile-course.yaml');
  const player = join(folder, 'hostile-player.yaml');
  writeFileSync(course, hostileCourse());
  writeFileSync(player, hostilePlayer());
  sheets.hostile = ['--course', course, '--player', player];
  sheets['club-hostile'] = ['--bands', '--course', course, '--band', 'scratch'];
}

function writeSheet(name) {
  const file = join(folder, `${name}.html`);
  rmSync(file, { force: true });
  execFileSync(program, ['report', '--output', file, ...sheets[name]], { stdio: ['ignore', 'ignore', 'inherit'] });
  return file;
}

mkdirSync(folder, { recursive: true });
writeHostile();

describe('lesson sheet', () => {
  let browser;
  before(async () => { browser = await openBrowser(); });
  after(() => browser?.close());

  for (const name of Object.keys(sheets)) {
    it(name, async () => {
      const file = writeSheet(name);
      for (const size of [telephone, tablet, desk]) {
        const { page, seen, url } = await openFile(browser, file, size, size === tablet);
        await screenshot(page, `sheets/${name}-${size.width}`);
        assert.deepEqual(await layoutFaults(page), [], `${size.width} pixels`);
        if (size !== desk) assert.deepEqual(await seriousFaults(page), [], `${size.width} pixels`);
        assert.deepEqual(seen.errors, []);
        assert.deepEqual(foreignRequests(seen, url), []);
        await page.close();
      }
    });

    it(`${name}, on paper`, async () => {
      const { page } = await openFile(browser, join(folder, `${name}.html`), desk);
      const faults = await paperFaults(page);
      await page.emulateMediaType('print');
      await page.setViewport(paper);
      await screenshot(page, `sheets/${name}-a4`);
      await page.pdf({ path: join(folder, `${name}.pdf`), preferCSSPageSize: true });
      assert.deepEqual(faults, []);
      await page.close();
    });
  }
});
