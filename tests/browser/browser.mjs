// Debian's Chromium without a window, or its Firefox, and what a page did in it: its errors, and what it asked for.
import { mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer-core';

export const chromium = process.env.CHROMIUM ?? '/usr/bin/chromium';
export const firefox = process.env.FIREFOX ?? '/usr/bin/firefox-esr';
export const screenshots = process.env.YARDWORTH_SCREENSHOTS ?? 'build/browser';
export const downloads = resolve(screenshots, 'downloads');

export const telephone = { width: 360, height: 740 };
export const tablet = { width: 768, height: 1024 };
export const desk = { width: 1400, height: 900 };

// Root has no sandbox of Chromium's.
export function openBrowser() {
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return puppeteer.launch({ executablePath: chromium, headless: true, args, protocolTimeout: 300000 });
}

export function openFirefox() {
  return puppeteer.launch({ browser: 'firefox', executablePath: firefox, headless: true, protocolTimeout: 300000 });
}

async function newTab(browser, dark) {
  // The protocol that Firefox speaks has no words for either.
  if ((await browser.version()).toLowerCase().startsWith('firefox')) return browser.newPage();
  const downloadBehavior = { policy: 'allow', downloadPath: downloads };
  const context = await browser.createBrowserContext({ downloadBehavior });
  const page = await context.newPage();
  await page.bringToFront(); // what is behind others is given less of the machine
  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: dark ? 'dark' : 'light' }]);
  return page;
}

// A page that has no file open yet, in a browser that remembers nothing, and lists that fill while it is used.
export async function newPage(browser, size, dark = false) {
  const page = await newTab(browser, dark);
  await page.setViewport(size);
  const seen = { errors: [], requests: [] };
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warn') seen.errors.push(message.text());
  });
  page.on('pageerror', (error) => seen.errors.push(String(error)));
  page.on('request', (request) => seen.requests.push(request.url()));
  return { page, seen };
}

export async function openFile(browser, file, size, dark = false) {
  const opened = await newPage(browser, size, dark);
  const url = pathToFileURL(file).href;
  await opened.page.goto(url, { waitUntil: 'load' });
  return { ...opened, url };
}

// What a page asked for beside itself and what it has inside: blobs that it made, and pictures written into its style.
export function foreignRequests(seen, url) {
  const own = (asked) => asked.split('#')[0] === url || /^(blob|data):/.test(asked);
  return seen.requests.filter((asked) => !own(asked));
}

export async function screenshot(page, name, whole = true) {
  const path = join(screenshots, `${name}.png`);
  mkdirSync(dirname(path), { recursive: true });
  await page.screenshot({ path, fullPage: whole });
}
