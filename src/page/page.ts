// What the screens have in common: the case that is open, the library, and what it understood of course and golfer.

import { type Case, strikeKeys, type Strike, type TextName } from "./case";
import type { Engines, Request } from "./engines";
import type { HoleFacts } from "./round";
import type { Store } from "./store";

export const draws = 60; // of what was measured: each is a round to be worked out

export interface CourseFacts {
  name: string;
  units: string;
  tees: string[];
  holes: HoleFacts[];
}

export interface PlayerFacts {
  label: string;
  units: string;
  clubs: string[];
}

// Of the last texts that had no faults.
export interface Facts {
  course: CourseFacts | null;
  player: PlayerFacts | null;
}

export interface Page {
  store: Store;
  engines: Engines;
  facts: Facts;
  // What was found in a text; null where it has faults.
  learn(which: "course" | "player", text: string, facts: CourseFacts | PlayerFacts | null): void;
  // Whether the texts that are open were looked at and have no faults; nothing while one is still to be looked at.
  understood(): boolean | null;
  onFacts(hear: () => void): void;
  nameOf(which: TextName): string;
}

export function makePage(store: Store, engines: Engines): Page {
  const hearers: (() => void)[] = [];
  const facts: Facts = { course: null, player: null };
  const looked = { course: { text: "", good: false }, player: { text: "", good: false } };
  return {
    store, engines, facts,
    learn(which, text, learned) {
      looked[which] = { text, good: learned !== null };
      if (learned !== null) Object.assign(facts, { [which]: learned });
      hearers.forEach((hear) => hear());
    },
    understood() {
      const { course, player } = store.open.texts;
      if (looked.course.text !== course || looked.player.text !== player) return null;
      return looked.course.good && looked.player.good;
    },
    onFacts: (hear) => { hearers.push(hear); },
    nameOf: (which) => store.open.names[which] ?? which,
  };
}

// Texts of the case as members of a request, with the names that findings call them.
export function textsFor(open: Case, whiches: TextName[]): Request {
  const request: Request = {};
  const names: Record<string, string> = {};
  for (const which of whiches) {
    const text = open.texts[which];
    if (text === undefined) continue;
    request[which] = text;
    names[which] = open.names[which] ?? which;
  }
  return { ...request, names };
}

// What differs of a strike from one before it.
export function differences(before: Strike, after: Strike): Strike {
  const different: Strike = {};
  for (const key of strikeKeys) {
    const number = after[key];
    if (number !== undefined && number !== before[key]) different[key] = number;
  }
  return different;
}

// What says the change on the course: texts and options of gain, strategy and report.
export function changeIn(open: Case): { texts: TextName[]; options: Request } {
  const { settings } = open;
  if (settings.change === "logs") return { texts: ["log", "after"], options: { skip_bad_rows: true } };
  if (settings.change === "strike") {
    const before = settings.strikeBefore ?? {};
    return { texts: [], options: { from_delivery: before, to: differences(before, settings.strike) } };
  }
  return { texts: [], options: { driver: settings.driver, irons: settings.irons } };
}

export function roundRequest(open: Case, command: string, columns: number): Request {
  const { texts, options } = changeIn(open);
  const tee = open.settings.tee === "" ? {} : { tee: open.settings.tee };
  return {
    command, columns, ...textsFor(open, ["course", "player", "baseline", ...texts]),
    options: { ...options, ...tee },
  };
}
