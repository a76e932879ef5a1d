// What was measured before and after, and what the strike of the driver gives away.

import { logs } from "./built_in";
import { type Case, type StrikeKey, strikeKeys, type Strike } from "./case";
import { afterRest, onChoice, onClick, oneAtATime, setChoices, slider, type Slider } from "./fields";
import { differences, type Page, textsFor } from "./page";
import { columnsOf, element, make, resultIn } from "./show";
import { textEditor } from "./who";

const restBeforeMeasuring = 300; // milliseconds
const heading = "club,carry_yd,offline_yd";

interface StrikeField {
  key: StrikeKey;
  words: string;
  least: number;
  most: number;
  step: number;
}

const strikeFields: StrikeField[] = [
  { key: "club_speed_mph", words: "Club head speed, mph", least: 50, most: 130, step: 0.5 },
  { key: "attack_deg", words: "Attack angle, degrees up", least: -8, most: 8, step: 0.5 },
  { key: "dynamic_loft_deg", words: "Dynamic loft, degrees", least: 5, most: 30, step: 0.5 },
  { key: "path_deg", words: "Club path, degrees right", least: -10, most: 10, step: 0.5 },
  { key: "face_deg", words: "Face angle, degrees right", least: -10, most: 10, step: 0.5 },
];

function sliderRow({ key, words, least, most, step }: StrikeField): HTMLElement {
  const row = make("div", "", "slider");
  const label = make("label", words);
  label.htmlFor = key;
  const range = make("input");
  const number = make("input");
  Object.assign(range, { type: "range", id: key, min: String(least), max: String(most), step: String(step) });
  Object.assign(number, { type: "number", id: `${key}-number`, step: "any" });
  number.setAttribute("aria-label", words);
  row.append(label, range, number);
  return row;
}

function startLogs(page: Page): void {
  const { store, engines } = page;
  const before = textEditor(page, "log", "log-editor", "Shots measured before");
  const after = textEditor(page, "after", "after-editor", "Shots measured after");
  const result = resultIn(element("bag-result"), "What was measured", ["bag"]);
  const skip = element<HTMLInputElement>("skip");
  skip.checked = true;
  let asked = "";

  async function measure(): Promise<void> {
    const { log, after: later } = store.open.texts;
    if (!log) return;
    const texts = textsFor(store.open, later ? ["player", "log", "after"] : ["player", "log"]);
    const options = { skip_bad_rows: skip.checked, pictures: true };
    const request = { command: "bag", ...texts, options, columns: columnsOf(element("bag-result")) };
    if (asked === JSON.stringify(request)) return;
    asked = JSON.stringify(request);
    result.wait(true);
    const reply = await engines.askQuickly("bag", request);
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
    for (const [which, editor] of [["log", before], ["after", after]] as const) {
      editor.showFindings(reply.findings.filter((finding) => finding.file === page.nameOf(which)));
    }
  }
  const measureSoon = afterRest(restBeforeMeasuring, () => void measure());

  const list = onChoice("logs", (name) => {
    const chosen = logs[name];
    store.change((open) => {
      if (chosen === undefined) {
        delete open.texts.log;
        delete open.texts.after;
        return;
      }
      Object.assign(open.texts, { log: chosen.before, after: chosen.after });
      Object.assign(open.names, { log: `${name}-before.csv`, after: `${name}-after.csv` });
    });
  });
  skip.addEventListener("change", measureSoon);
  const show = (): void => {
    const { log, after: later } = store.open.texts;
    before.set(log ?? "");
    after.set(later ?? "");
    element("bag-result").hidden = !log;
    const chosen = Object.entries(logs).find(([, pair]) => pair.before === log && pair.after === later)?.[0];
    const choices = [{ value: "", words: "none" }, ...Object.keys(logs).map((name) => ({ value: name, words: name }))];
    if (log && chosen === undefined) choices.push({ value: "own", words: "your own" });
    setChoices(list, choices, chosen ?? (log ? "own" : ""));
    measureSoon();
  };
  store.onChange(show);
  show();
}

function addStrike(open: Case, which: "log" | "after", row: string): void {
  const text = open.texts[which];
  if (!text) open.names[which] = which === "log" ? "before.csv" : "after.csv";
  open.texts[which] = `${text ? text.replace(/\n*$/, "\n") : `${heading}\n`}${row}\n`;
}

// A row for a log that was begun here; the columns of another one are not known.
function startStrikes(page: Page): void {
  const clubs = element<HTMLSelectElement>("strike-club");
  const carry = element<HTMLInputElement>("strike-carry");
  const offline = element<HTMLInputElement>("strike-offline");
  const told = element("strike-added");
  page.onFacts(() => {
    const names = page.facts.player?.clubs ?? [];
    setChoices(clubs, names.map((name) => ({ value: name, words: name })), clubs.value || (names[0] ?? ""));
  });
  onClick("strike-add", () => {
    const which = element<HTMLSelectElement>("strike-log").value === "after" ? "after" : "log";
    const text = page.store.open.texts[which];
    if (text && !text.startsWith(heading)) {
      told.textContent = "This log has other columns; choose none above to begin one of your own, or edit its text.";
      return;
    }
    const row = `${clubs.value.replaceAll(",", " ")},${carry.value.trim()},${offline.value.trim()}`;
    page.store.change((open) => addStrike(open, which, row), which);
    told.textContent = `Added: ${row}`;
    carry.value = offline.value = "";
    carry.focus();
  });
}

function startDelivery(page: Page): void {
  const { store, engines } = page;
  element("strike-sliders").append(...strikeFields.map(sliderRow));
  const result = resultIn(element("delivery-result"), "How the driver is struck", ["delivery"]);
  const sliders = new Map<StrikeKey, Slider>(strikeKeys.map((key) => [key, slider(key, (value) => {
    store.change((open) => { open.settings.strike[key] = value; });
  })]));
  let typical: Strike = {};

  const ask = oneAtATime(async () => {
    const { strike, strikeBefore } = store.open.settings;
    const to = strikeBefore === null ? null : differences(strikeBefore, strike);
    const compared = to !== null && Object.keys(to).length > 0 ? { ...strikeBefore, to } : strike;
    const columns = columnsOf(element("delivery-result"));
    const reply = await engines.askQuickly("delivery", {
      command: "delivery", options: { ...compared, pictures: true }, columns,
    });
    if (reply === null) return;
    result.show(reply);
    if (reply.status !== 0) return;
    if (Object.keys(typical).length === 0) typical = reply.answer.strike;
    const shown: Strike = { ...reply.answer.strike, ...reply.answer.after?.strike };
    for (const key of strikeKeys) sliders.get(key)?.set(store.open.settings.strike[key] ?? shown[key] ?? 0);
  });
  onClick("strike-keep", () => store.change((open) => {
    open.settings.strikeBefore = { ...typical, ...open.settings.strike };
  }));
  onClick("strike-forget", () => store.change((open) => { open.settings.strikeBefore = null; }));
  store.onChange(ask);
  // After the course has asked, whose answer is waited for when the page opens.
  page.onFacts(() => {
    if (page.understood() !== null) ask();
  });
}

export function startBay(page: Page): void {
  startLogs(page);
  startStrikes(page);
  startDelivery(page);
}
