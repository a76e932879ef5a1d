// The case that is open: who reads it hears of every change, and it is kept in this browser alone.

import { type Case, caseOf, type TextName } from "./case";

export interface Store {
  open: Case;
  unsaved: Set<TextName>; // typed, and in no file yet
  kept: boolean;
  // typed: the text that was changed by typing, which would be lost with the browser's memory.
  change(edit: (open: Case) => void, typed?: TextName): void;
  onChange(hear: () => void): void;
  // All of it as it was when the page was new.
  clear(): void;
}

// The case in a copy of the page counts until something else was entered in that very copy.
interface Kept {
  inside: unknown;
  open: unknown;
}

const place = `yardworth ${location.pathname}`;
const restBeforeKeeping = 200; // milliseconds

function readKept(inside: unknown): unknown {
  try {
    const kept = JSON.parse(localStorage.getItem(place) ?? "null") as Kept | null;
    return kept !== null && JSON.stringify(kept.inside) === JSON.stringify(inside) ? kept.open : inside;
  } catch {
    return inside;
  }
}

function keep(kept: Kept): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
}

// inside: the case that this copy of the page holds, or null.
export function openStore(inside: unknown, usual: Case): Store {
  const hearers: (() => void)[] = [];
  let waiting: number | undefined;
  const keepNow = (): void => {
    window.clearTimeout(waiting);
    waiting = undefined;
    store.kept = keep({ inside, open: store.open });
  };
  const store: Store = {
    open: caseOf(readKept(inside), usual),
    unsaved: new Set(),
    kept: true,
    change(edit, typed) {
      edit(store.open);
      if (typed !== undefined) store.unsaved.add(typed);
      window.clearTimeout(waiting);
      waiting = window.setTimeout(keepNow, restBeforeKeeping);
      hearers.forEach((hear) => hear());
    },
    onChange(hear) {
      hearers.push(hear);
    },
    clear() {
      localStorage.removeItem(place);
      store.open = caseOf(inside, usual);
      store.unsaved.clear();
      hearers.forEach((hear) => hear());
    },
  };
  window.addEventListener("pagehide", () => { if (waiting !== undefined) keepNow(); });
  window.addEventListener("beforeunload", (leaving) => {
    if (waiting !== undefined) keepNow();
    if (store.unsaved.size > 0) leaving.preventDefault();
  });
  return store;
}
