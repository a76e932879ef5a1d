// What axe-core (Deque Systems' rules for WCAG 2.1 A and AA, and its best practices) finds seriously wrong.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export async function seriousFaults(page) {
  await page.evaluate(source);
  const result = await page.evaluate(() => globalThis.axe.run(document, { resultTypes: ['violations'] }));
  return result.violations
    .filter((rule) => rule.impact === 'serious' || rule.impact === 'critical')
    .map((rule) => `${rule.id}: ${rule.help}: ${rule.nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`);
}
