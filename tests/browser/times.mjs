// How long a reader of the page waits, in Chromium on this machine; prints numbers and asserts nothing.
//
//   node tests/browser/times.mjs PAGE, after `npm ci` in tests/browser
//
// Times are from what a hand does to the words on the screen, the least, the middle and the longest of several. Nothing
// else should run meanwhile.

import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { desk, newPage, openBrowser } from './browser.mjs';
import { answered, settled, until } from './waiting.mjs';

const openings = 8;
const carries = [8, 26, 10, 28, 12, 30, 14]; // yards apart, so that each answer has words of its own
const golfers = [
  'weekend-16-man', 'scratch-man', '8-man', '24-man', 'senior-20-man', '12-woman', '28-woman', 'junior',
];

const url = pathToFileURL(process.argv[2]).href;

function told(times) {
  const rising = [...times].sort((a, b) => a - b);
  const [least, middle, most] = [rising[0], rising[Math.floor(rising.length / 2)], rising.at(-1)];
  return `${least} to ${most}, middle ${middle}`;
}

// From the command to open the file.
async function openingTimes(browser) {
  const times = { hole: [], round: [] };
  for (let i = 0; i < openings; ++i) {
    const { page } = await newPage(browser, desk);
    const started = Date.now();
    await page.goto(url);
    await until(page, () => document.querySelector('#hole-result .lead'));
    times.hole.push(Date.now() - started);
    await answered(page, '#round-result');
    times.round.push(Date.now() - started);
    await settled(page);
    await page.close();
  }
  return times;
}

// Runs in the page: how long after a slider moved the answers are there.
function timesOfSlider(value) {
  const words = (place) => document.querySelector(`${place} .lead`).textContent;
  const before = { hole: words('#hole-result'), round: words('#round-result') };
  const started = performance.now();
  const range = document.querySelector('#driver');
  range.value = String(value);
  range.dispatchEvent(new Event('input', { bubbles: true }));
  const times = {};
  return new Promise((done, fail) => {
    const look = () => {
      for (const which of ['hole', 'round']) {
        const place = `#${which}-result`;
        if (times[which] === undefined && words(place) !== before[which]) {
          times[which] = Math.round(performance.now() - started);
        }
      }
      if (times.hole !== undefined && times.round !== undefined) done(times);
      else if (performance.now() - started > 20000) fail(new Error(`no new answer for ${value}`));
      else setTimeout(look, 1);
    };
    look();
  });
}

// Of a slider that is moved once all is drawn, to places where it has not been.
async function sliderTimes(page, further) {
  const times = { hole: [], round: [] };
  for (let i = 0; i < carries.length; ++i) {
    await settled(page);
    const { hole, round } = await page.evaluate(timesOfSlider, carries[i] + further);
    times.hole.push(hole);
    times.round.push(round);
    await answered(page, '#round-result');
  }
  return times;
}

// What the process of the page has for itself alone, in megabytes: Linux keeps account of it.
function megabytesOf(process) {
  const rollup = readFileSync(`/proc/${process}/smaps_rollup`, 'utf8');
  return [...rollup.matchAll(/^Private_\w+: +(\d+) kB$/gm)].reduce((sum, [, kilobytes]) => sum + kilobytes / 1024, 0);
}

async function largestRenderer(browser) {
  const session = await browser.target().createCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  return Math.max(...processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => megabytesOf(id)));
}

const browser = await openBrowser();
const blank = await newPage(browser, desk);
const empty = await largestRenderer(browser);
await blank.page.close();
const opening = await openingTimes(browser);
console.log(`milliseconds from opening to the first answer: ${told(opening.hole)}`);
console.log(`milliseconds from opening to the first round: ${told(opening.round)}`);
const { page } = await newPage(browser, desk);
await page.goto(url);
await answered(page, '#round-result');
for (const golfer of golfers) {
  await page.select('#player', `${golfer}.yaml`);
  for (const [further, plan] of ['habit', 'both'].entries()) {
    await page.select('#plan', plan);
    await pause(300); // until the question is put
    await answered(page, '#round-result');
    const times = await sliderTimes(page, further);
    console.log(`${golfer}, plan ${plan}: hole in view ${told(times.hole)}; round ${told(times.round)}`);
  }
}
const working = await largestRenderer(browser);
await pause(15000); // until engines that nobody asks anything have given theirs back
const resting = await largestRenderer(browser);
const megabytes = [working, resting, empty].map(Math.round);
console.log(`megabytes of the page's process at work, at rest, and of an empty page: ${megabytes.join(', ')}`);
await browser.close();
