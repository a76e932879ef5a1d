// What a user has entered: the texts of files, and the settings beside them. A copy of the page has such a case inside,
// as JSON; its texts are members of requests (docs/embedding.md), so that a request is a case without settings.

export const textNames = ["course", "player", "baseline", "log", "after", "members", "options_file"] as const;
export type TextName = (typeof textNames)[number];
export type Texts = Partial<Record<TextName, string>>;

export const strikeKeys = ["club_speed_mph", "attack_deg", "dynamic_loft_deg", "path_deg", "face_deg"] as const;
export type StrikeKey = (typeof strikeKeys)[number];
export type Strike = Partial<Record<StrikeKey, number>>;

export const changeSources = ["said", "logs", "strike"] as const;
export type ChangeSource = (typeof changeSources)[number];

// A hazard that is moved: by so much along the hole and to the right, in the course's units. Members as in requests.
export interface HazardMove {
  hole: number;
  hazard: number; // from 1 in the order of the file
  along: number;
  right: number;
}

export interface Settings {
  driver: number; // added carry, in the course's units
  irons: number;
  tee: string; // empty: the tees that the library takes
  plan: string;
  hole: number; // in view
  change: ChangeSource; // what says the change on the course
  strike: Strike; // in the bay: now, or afterwards where one was put before it
  strikeBefore: Strike | null;
  strokeWorth: string;
  bandDriver: number;
  bandTee: string;
  hazard: HazardMove | null;
}

export interface Case {
  texts: Texts;
  names: Texts; // what the user calls the texts
  settings: Settings;
}

const usualSettings: Settings = {
  driver: 20, irons: 6, tee: "", plan: "both", hole: 1, change: "said", strike: {}, strikeBefore: null,
  strokeWorth: "", bandDriver: 20, bandTee: "", hazard: null,
};

// One that takes what fits of a case that was kept, given or written for another version.
export function caseOf(given: unknown, usual: Case): Case {
  if (typeof given !== "object" || given === null) return structuredClone(usual);
  const said = given as Record<string, unknown>;
  const texts = textsOf(said["texts"] ?? said);
  const names = textsOf(said["names"]);
  const settings = settingsOf(said["settings"]);
  // What was measured is what a case with logs is about.
  if (said["settings"] === undefined && texts.log !== undefined) settings.change = "logs";
  return { texts: { ...usual.texts, ...texts }, names: { ...namesBeside(usual, texts), ...names }, settings };
}

export function usualCase(texts: Texts, names: Texts): Case {
  return { texts, names, settings: structuredClone(usualSettings) };
}

// A text that was given is not called what the usual one is called.
function namesBeside(usual: Case, given: Texts): Texts {
  const names = { ...usual.names };
  for (const which of textNames) if (given[which] !== undefined) delete names[which];
  return names;
}

function textsOf(given: unknown): Texts {
  const texts: Texts = {};
  if (typeof given !== "object" || given === null) return texts;
  for (const which of textNames) {
    const text = (given as Record<string, unknown>)[which];
    if (typeof text === "string") texts[which] = text;
  }
  return texts;
}

function settingsOf(given: unknown): Settings {
  const settings = structuredClone(usualSettings);
  if (typeof given !== "object" || given === null) return settings;
  const said = given as Record<string, unknown>;
  const target = settings as unknown as Record<string, unknown>;
  for (const key of ["driver", "irons", "tee", "plan", "hole", "strokeWorth", "bandDriver", "bandTee"]) {
    if (typeof said[key] === typeof target[key]) target[key] = said[key];
  }
  const change = changeSources.find((source) => source === said["change"]);
  if (change !== undefined) settings.change = change;
  settings.strike = strikeOf(said["strike"]) ?? {};
  settings.strikeBefore = strikeOf(said["strikeBefore"]);
  settings.hazard = hazardOf(said["hazard"]);
  return settings;
}

function hazardOf(given: unknown): HazardMove | null {
  if (typeof given !== "object" || given === null) return null;
  const { hole, hazard, along, right } = given as Record<string, unknown>;
  const numbers = typeof hole === "number" && typeof hazard === "number" && typeof along === "number" &&
    typeof right === "number";
  return numbers ? { hole, hazard, along, right } : null;
}

// What was chosen of one course means nothing on another.
export function forgetCourse(settings: Settings): void {
  Object.assign(settings, { tee: "", hole: 1, bandTee: "", hazard: null });
}

function strikeOf(given: unknown): Strike | null {
  if (typeof given !== "object" || given === null) return null;
  const strike: Strike = {};
  for (const key of strikeKeys) {
    const number = (given as Record<string, unknown>)[key];
    if (typeof number === "number") strike[key] = number;
  }
  return strike;
}
