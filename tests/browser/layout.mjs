// Looks for what is laid out badly: text over text, text that is cut off, pictures that leave their frame, pages wider
// than the screen, and on paper pictures that a page break would divide.

// CSS pixels: A4 less the margins of 14 mm that the sheets have, at 96 pixels an inch.
const millimetre = 96 / 25.4;
export const paper = { width: Math.floor((210 - 28) * millimetre), height: Math.floor((297 - 28) * millimetre) };

// Runs in the page. Boxes of glyphs have room above and below that may meet: what counts is the ink, about the middle
// three fifths.
function findFaults() {
  const slack = 1.5;
  const faults = [];
  const short = (text) => JSON.stringify(text.trim().replace(/\s+/g, ' ').slice(0, 50));
  const visible = (element) => element.checkVisibility({ visibilityProperty: true });
  const parentOf = (element) => element.parentElement ?? element.getRootNode().host ?? null;

  // The document and the trees of their own inside it.
  function trees(root) {
    const inside = [...root.querySelectorAll('*')].filter((element) => element.shadowRoot);
    return [root, ...inside.flatMap((element) => trees(element.shadowRoot))];
  }
  const everywhere = (selector) => trees(document).flatMap((root) => [...root.querySelectorAll(selector)]);

  const inView = (rect) => rect.width > 0 && rect.height > 0;

  const scrolls = (element) => /auto|scroll/.test(getComputedStyle(element).overflow);

  // What is left of a box where parts of the page that are scrolled show it.
  function shownOf(box, element) {
    let shown = box;
    for (let at = element; at && at !== document.documentElement; at = parentOf(at)) {
      if (!scrolls(at)) continue;
      const frame = at.getBoundingClientRect();
      shown = {
        left: Math.max(shown.left, frame.left), right: Math.min(shown.right, frame.right),
        top: Math.max(shown.top, frame.top), bottom: Math.min(shown.bottom, frame.bottom),
      };
    }
    return shown;
  }

  // Each line of each text, as boxes of ink.
  function inkOf(node) {
    const range = document.createRange();
    range.selectNodeContents(node);
    return [...range.getClientRects()].filter(inView).map((rect) => ({
      left: rect.left, right: rect.right, top: rect.top + 0.2 * rect.height, bottom: rect.bottom - 0.2 * rect.height,
    })).map((box) => shownOf(box, node.parentElement)).filter((box) => box.right > box.left && box.bottom > box.top);
  }

  // Frames that cut a text off: those that do so on purpose mark what is missing by themselves.
  function frameOf(element) {
    for (let at = parentOf(element); at; at = parentOf(at)) {
      if (at.tagName.toLowerCase() === 'svg') return at.getBoundingClientRect();
      const flow = getComputedStyle(at);
      if (['auto', 'scroll'].includes(flow.overflowX)) return null;
      if (flow.overflowX === 'hidden' || flow.overflowX === 'clip') return at.getBoundingClientRect();
    }
    return { left: 0, right: document.documentElement.clientWidth, top: -Infinity, bottom: Infinity };
  }

  const hiddenFromEyes = (element) => element.closest('title, desc, style, script, option') !== null;

  function textsIn(root) {
    const found = [];
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const node = walker.currentNode;
      const element = node.parentElement;
      if (!node.data.trim() || hiddenFromEyes(element) || !visible(element)) continue;
      const boxes = inkOf(node);
      if (boxes.length > 0) found.push({ text: node.data, element, boxes });
    }
    return found;
  }

  function cutTexts(all) {
    for (const { text, element, boxes } of all) {
      const frame = frameOf(element);
      if (frame === null) continue;
      const cut = boxes.some((box) => box.left < frame.left - slack || box.right > frame.right + slack ||
        box.top < frame.top - slack || box.bottom > frame.bottom + slack);
      if (cut) faults.push(`cut off: ${short(text)}`);
    }
  }

  function overlap(a, b) {
    return Math.min(a.right, b.right) - Math.max(a.left, b.left) > slack &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > slack;
  }

  function overlappingTexts(all) {
    const lines = all.flatMap(({ text, boxes }, index) => boxes.map((box) => ({ text, index, ...box })));
    lines.sort((a, b) => a.top - b.top);
    lines.forEach((a, at) => {
      for (let next = at + 1; next < lines.length && lines[next].top < a.bottom; ++next) {
        const b = lines[next];
        if (a.index !== b.index && overlap(a, b)) faults.push(`overlap: ${short(a.text)} and ${short(b.text)}`);
      }
    });
  }

  // The outermost of what is drawn; what is clipped on purpose cannot leave its frame.
  function picturesOutside() {
    for (const svg of everywhere('svg[role=img]')) {
      if (!visible(svg)) continue;
      const frame = svg.getBoundingClientRect();
      const name = short(svg.querySelector('title')?.textContent ?? '');
      if (frame.left < -slack || frame.right > document.documentElement.clientWidth + slack) {
        if (frameOf(svg) !== null) faults.push(`picture outside the page: ${name}`);
      }
      for (const shape of svg.querySelectorAll('rect, path, circle, ellipse, line, polygon')) {
        if (shape.closest('[clip-path], defs, pattern, clipPath, svg svg')) continue;
        const box = shape.getBoundingClientRect();
        const outside = box.left < frame.left - slack || box.right > frame.right + slack ||
          box.top < frame.top - slack || box.bottom > frame.bottom + slack;
        if (outside) faults.push(`drawn outside its frame: ${name}`);
      }
    }
  }

  window.scrollTo(0, 0); // where nothing that sticks lies over anything
  const all = [document.body, ...trees(document).slice(1)].flatMap(textsIn);
  cutTexts(all);
  overlappingTexts(all);
  picturesOutside();
  const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
  if (wide > 0) faults.push(`the page is ${wide} pixels wider than the screen`);
  return [...new Set(faults)];
}

export function layoutFaults(page) {
  return page.evaluate(findFaults);
}

// Runs in the page, laid out as for paper.
function findDivided(height) {
  const faults = [];
  for (const picture of document.querySelectorAll('figure, svg[role=img]')) {
    const box = picture.getBoundingClientRect();
    if (box.height === 0) continue;
    const name = picture.querySelector('title')?.textContent ?? picture.tagName;
    const kept = picture.closest('figure') ?? picture;
    if (box.height > height) faults.push(`higher than a page: ${name}`);
    if (getComputedStyle(kept).breakInside !== 'avoid') faults.push(`may be divided by a page break: ${name}`);
  }
  return faults;
}

// What is wrong on A4. The page is left as it was.
export async function paperFaults(page) {
  const size = page.viewport();
  await page.emulateMediaType('print');
  await page.setViewport(paper);
  const faults = [...(await layoutFaults(page)), ...(await page.evaluate(findDivided, paper.height))];
  await page.emulateMediaType('screen');
  await page.setViewport(size);
  return faults;
}
