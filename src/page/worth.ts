// Ways to spend money and hours, side by side.

import { logs } from "./built_in";
import type { Case } from "./case";
import type { Request } from "./engines";
import { onChoice, onClick } from "./fields";
import { differences, draws, type Page, textsFor } from "./page";
import { columnsOf, element, resultIn, showFindings } from "./show";
import { textEditor } from "./who";

const valueOf = (id: string): string => element<HTMLInputElement | HTMLSelectElement>(id).value.trim();

// What options call the logs of the bay: as their files are called, and never the same.
function namesOfLogs(open: Case): { log: string; after: string } {
  const { log = "log", after = "after" } = open.names;
  return { log, after: after === log ? `after ${after}` : after };
}

// The texts that the options may name: logs of the bay, and those that the page has inside.
function filesFor(open: Case): Request {
  const { texts } = open;
  const names = namesOfLogs(open);
  const known: Record<string, string | undefined> = {};
  for (const [name, pair] of Object.entries(logs)) {
    known[`${name}-before.csv`] = pair.before;
    known[`${name}-after.csv`] = pair.after;
  }
  known[names.log] = texts.log ?? known[names.log];
  known[names.after] = texts.after ?? known[names.after];
  const named = Object.entries(known).filter(([name, text]) => text && texts.options_file?.includes(name));
  return named.length === 0 ? {} : { files: Object.fromEntries(named) };
}

// The text of a change, as the options file has it; null where the bay has nothing of the kind.
function changeText(open: Case, from: string): string | null {
  if (from === "logs") {
    const { log, after } = namesOfLogs(open);
    if (!open.texts.log || !open.texts.after) return null;
    return `{from_log: [${JSON.stringify(log)}, ${JSON.stringify(after)}], bad_rows: skipped}`;
  }
  if (from === "strike") {
    const { strike, strikeBefore } = open.settings;
    const to = differences(strikeBefore ?? {}, strike);
    if (strikeBefore === null || Object.keys(to).length === 0) return null;
    const flow = (of: object): string => `{${Object.entries(of).map(([key, value]) => `${key}: ${value}`).join(", ")}}`;
    return `{from_delivery: ${flow(strikeBefore)}, to: ${flow(to)}}`;
  }
  const carries = (["driver", "irons"] as const).filter((which) => valueOf(`option-${which}`) !== "");
  return `{${carries.map((which) => `${which}: ${valueOf(`option-${which}`)}`).join(", ")}}`;
}

const missing: Record<string, string> = {
  logs: "There are no logs before and after in the bay yet.",
  strike: "There are no two strikes in the bay yet: compare with one there, then move a slider.",
};

// One more line, as far to the right as the lines of the options that are there.
function withOption(text: string, line: string): string {
  const begin = /^ *(?=- )/m.exec(text)?.[0] ?? "  ";
  const file = text.trim() === "" ? "format: yardworth/options/1\noptions:" : text.trimEnd();
  return `${file}\n${begin}- ${line}\n`;
}

function startForm(page: Page): void {
  const { store } = page;
  const told = element("option-added");
  const showChange = (): void => {
    const words: Record<string, string> = { carry: "", logs: "what the bay measured", strike: "the strike of the bay" };
    const name = element<HTMLInputElement>("option-name");
    if (name.value === "" || Object.values(words).includes(name.value)) name.value = words[valueOf("option-change")] ?? "";
    element("option-carry").hidden = valueOf("option-change") !== "carry";
  };
  onChoice("option-change", showChange);
  onClick("option-add", () => {
    const from = valueOf("option-change");
    const change = changeText(store.open, from);
    if (change === null) {
      told.textContent = missing[from] ?? "";
      return;
    }
    const cost = `{money: ${valueOf("option-money") || 0}, hours: ${valueOf("option-hours") || 0}}`;
    const line = `{name: ${JSON.stringify(valueOf("option-name"))}, change: ${change}, cost: ${cost}}`;
    store.change((open) => { open.texts.options_file = withOption(open.texts.options_file ?? "", line); }, "options_file");
    told.textContent = `Added: ${line}`;
  });
  showChange();
}

export function startWorth(page: Page): void {
  const { store, engines } = page;
  const editor = textEditor(page, "options_file", "options-editor", "The options");
  const worth = element<HTMLInputElement>("stroke-worth");
  const result = resultIn(element("weigh-result"), "The options");

  async function weigh(): Promise<void> {
    const { settings } = store.open;
    const said = settings.strokeWorth.trim();
    // What is no number the library refuses in its own words.
    const strokeWorth = said === "" ? {} : { stroke_worth: Number.isFinite(Number(said)) ? Number(said) : said };
    const tee = settings.tee === "" ? {} : { tee: settings.tee };
    result.wait(true);
    const reply = await engines.ask("weigh", {
      command: "weigh", ...textsFor(store.open, ["course", "player", "baseline", "options_file"]), ...filesFor(store.open),
      options: { ...tee, ...strokeWorth, plan: "habit", draws }, columns: columnsOf(element("weigh-result")),
    });
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
    const found = reply.findings.filter((finding) => finding.file === page.nameOf("options_file"));
    editor.showFindings(found);
    showFindings(element("options-findings"), found, (finding) => editor.goTo(finding));
  }

  startForm(page);
  worth.addEventListener("input", () => store.change((open) => { open.settings.strokeWorth = worth.value; }));
  onClick("weigh", () => void weigh());
  const show = (): void => {
    editor.set(store.open.texts.options_file ?? "");
    if (document.activeElement !== worth) worth.value = store.open.settings.strokeWorth;
  };
  store.onChange(show);
  show();
}
