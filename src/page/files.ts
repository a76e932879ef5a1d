// Files that are dropped on the page or chosen: what each is, and what is wrong with it.

import { forgetCourse, type TextName } from "./case";
import type { Page } from "./page";
import { element, make, showFindings } from "./show";

const largestRead = 32 * 1024 * 1024; // bytes
const largestEdited = 256 * 1024; // what has faults and is longer is refused

const kinds: [RegExp, TextName][] = [
  [/^format: *yardworth\/course\/1/m, "course"],
  [/^format: *yardworth\/player\/1/m, "player"],
  [/^format: *yardworth\/baseline\/1/m, "baseline"],
  [/^format: *yardworth\/options\/1/m, "options_file"],
];

const titles: Record<TextName, string> = {
  course: "the course", player: "the golfer", baseline: "the baseline", log: "the shots before",
  after: "the shots after", members: "the members", options_file: "the options",
};

// A log that comes second, or is called so, is what was measured after.
function kindOfLog(page: Page, name: string): TextName {
  if (/after/i.test(name)) return "after";
  if (/before/i.test(name)) return "log";
  return page.store.open.texts.log && !page.store.open.texts.after ? "after" : "log";
}

function kindOf(page: Page, name: string, text: string): TextName | null {
  const found = kinds.find(([begins]) => begins.test(text.slice(0, 10000)));
  if (found !== undefined) return found[1];
  const heading = text.slice(0, 2000).split(/\r?\n/, 1)[0]?.toLowerCase() ?? "";
  if (/club/.test(heading) && /carry/.test(heading)) return kindOfLog(page, name);
  return /label/.test(heading) && /index/.test(heading) ? "members" : null;
}

// Faults are those of a course where nothing says what the file is.
function requestAbout(kind: TextName | null, name: string, text: string): Record<string, unknown> {
  const which = kind ?? "course";
  if (kind === "members") return { command: "check" };
  const command = which === "log" || which === "after" ? "bag" : which === "options_file" ? "weigh" : "check";
  const member = command === "bag" ? "log" : which;
  return { command, [member]: text, names: { [member]: name } };
}

async function take(page: Page, file: File, told: HTMLElement): Promise<void> {
  const line = make("p", `${file.name}: `);
  const faults = make("ul", "", "findings");
  told.append(line, faults);
  if (file.size > largestRead) {
    line.append(`${file.size} bytes are too many to be read here.`);
    return;
  }
  const text = await file.text();
  const kind = kindOf(page, file.name, text);
  const command = requestAbout(kind, file.name, text);
  // Options are looked at where they are weighed, which takes longer.
  const looked = kind === "members" || kind === "options_file";
  const reply = looked ? null : await page.engines.askQuickly(`dropped ${file.name}`, command);
  const faulty = reply !== null && reply.status !== 0;
  if (faulty) showFindings(faults, reply.findings);
  if (kind === null || (faulty && text.length > largestEdited)) {
    line.append("not taken.");
    return;
  }
  line.append(`taken as ${titles[kind]}${faulty ? ", with faults." : "."}`);
  page.store.unsaved.delete(kind);
  page.store.change((open) => {
    open.texts[kind] = text;
    open.names[kind] = file.name;
    if (kind === "course") forgetCourse(open.settings);
  });
}

async function takeAll(page: Page, files: Iterable<File>): Promise<void> {
  const told = element("dropped");
  told.replaceChildren();
  for (const file of files) await take(page, file, told);
}

export function startFiles(page: Page): void {
  const chooser = element<HTMLInputElement>("files");
  chooser.addEventListener("change", () => {
    const files = [...(chooser.files ?? [])];
    chooser.value = "";
    void takeAll(page, files);
  });
  document.addEventListener("dragover", (event) => {
    event.preventDefault();
    document.body.classList.add("dropping");
  });
  document.addEventListener("dragleave", () => document.body.classList.remove("dropping"));
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    document.body.classList.remove("dropping");
    void takeAll(page, [...(event.dataTransfer?.files ?? [])]);
  });
}
