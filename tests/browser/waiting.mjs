// What the page is waited for. Each waits as long as anything may take.
export const patience = 240000; // milliseconds

export function until(page, condition, ...given) {
  return page.waitForFunction(condition, { timeout: patience, polling: 20 }, ...given);
}

// Waits for an answer: other words than before.
export function answered(page, place, before = '') {
  return until(page, (selector, old) => {
    const result = document.querySelector(selector);
    const words = result?.querySelector('.lead')?.textContent ?? '';
    return words !== '' && words !== old && result.getAttribute('aria-busy') !== 'true';
  }, place, before);
}

// All holes are drawn, so that nothing is being worked out.
export function settled(page) {
  return until(page, () => {
    const maps = [...document.querySelectorAll('#maps button > div')];
    return maps.length > 0 && maps.every((map) => map.shadowRoot);
  });
}
