// The case that is open: who reads it hears of every change, and it is kept in this browser alone.

import { type Case, caseOf } from "./case";

export interface Store {
  open: Case;
  // Something typed that is in no file yet.
  unsaved: boolean;
  kept: boolean;
  // edited: by typing, so that it would be lost with the browser's memory.
  change(edit: (open: Case) => void, edited?: boolean): void;
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
    unsaved: false,
    kept: true,
    change(edit, edited = false) {
      edit(store.open);
      store.unsaved ||= edited;
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
      store.unsaved = false;
      hearers.forEach((hear) => hear());
    },
  };
  window.addEventListener("pagehide", () => { if (waiting !== undefined) keepNow(); });
  window.addEventListener("beforeunload", (leaving) => {
    if (waiting !== undefined) keepNow();
    if (store.unsaved) leaving.preventDefault();
  });
  return store;
}
