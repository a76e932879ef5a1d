// Fields of forms and what is heard of them.

import { element, make } from "./show";

// A slider and a number beside it, which show the same.
export interface Slider {
  set(value: number): void;
}

// settled: the finger that moved it was lifted.
export function slider(id: string, hear: (value: number) => void, settled: () => void = () => {}): Slider {
  const range = element<HTMLInputElement>(id);
  const number = element<HTMLInputElement>(`${id}-number`);
  const take = (from: HTMLInputElement, other: HTMLInputElement): void => {
    if (from.value === "" || !Number.isFinite(from.valueAsNumber)) return;
    other.value = from.value;
    hear(from.valueAsNumber);
  };
  range.addEventListener("input", () => take(range, number));
  range.addEventListener("change", settled);
  number.addEventListener("input", () => take(number, range));
  return {
    set(value) {
      range.value = String(value);
      if (document.activeElement !== number) number.value = String(value);
    },
  };
}

export interface Choice {
  value: string;
  words: string;
}

// The choices of a list, one of which is chosen; what was chosen stays where it still can.
export function setChoices(list: HTMLSelectElement, choices: Choice[], chosen: string): void {
  const same = list.options.length === choices.length &&
    choices.every(({ value, words }, at) => list.options[at]?.value === value && list.options[at]?.text === words);
  if (!same) {
    list.replaceChildren(...choices.map(({ value, words }) => {
      const option = make("option", words);
      option.value = value;
      return option;
    }));
  }
  list.value = chosen;
}

export function onClick(id: string, act: () => void): void {
  element(id).addEventListener("click", act);
}

export function onChoice(id: string, take: (value: string) => void): HTMLSelectElement {
  const list = element<HTMLSelectElement>(id);
  list.addEventListener("change", () => take(list.value));
  return list;
}

// Acts when nothing more has come for so many milliseconds.
export function afterRest(milliseconds: number, act: () => void): () => void {
  let waiting: number | undefined;
  return () => {
    window.clearTimeout(waiting);
    waiting = window.setTimeout(act, milliseconds);
  };
}

// Acts once more where it was asked to while it acted: one at a time, so that there is something to show for each while
// a finger still moves.
export function oneAtATime(act: () => Promise<void>): () => void {
  let acting = false;
  let again = false;
  return async () => {
    again = true;
    if (acting) return;
    acting = true;
    try {
      while (again) {
        again = false;
        await act();
      }
    } finally {
      acting = false;
    }
  };
}
