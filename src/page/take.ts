// What a user takes away: a lesson sheet, files, paper, a copy of the page with the case inside.

import { type TextName, textNames } from "./case";
import { onClick } from "./fields";
import { type Page, roundRequest } from "./page";
import { element, make } from "./show";

const titles: Record<TextName, string> = {
  course: "The course", player: "The golfer", baseline: "The baseline", log: "The shots before",
  after: "The shots after", members: "The members", options_file: "The options",
};

function save(name: string, text: string, type: string): void {
  const link = make("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

// A name that every system takes.
function fileNameOf(title: string, ending: string): string {
  const plain = title.toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "").slice(0, 40);
  return `lesson-for-${plain || "golfer"}${ending}`;
}

// The page as it was opened, with another case in the element for it, the first that has such a name. "<" would end it.
function copyWith(page: Page, source: string): string {
  const { texts, names, settings } = page.store.open;
  const inside = JSON.stringify({ format: "yardworth/case/1", ...texts, names, settings }).replaceAll("<", "\\u003c");
  const name = 'id="case">';
  const begin = source.indexOf(name) + name.length;
  return source.slice(0, begin) + inside + source.slice(source.indexOf("<", begin));
}

function showFiles(page: Page): void {
  const { texts } = page.store.open;
  element("save-files").replaceChildren(...textNames.filter((which) => texts[which]).map((which) => {
    const button = make("button", titles[which]);
    button.type = "button";
    button.addEventListener("click", () => {
      const ending = ["log", "after", "members"].includes(which) ? ".csv" : ".yaml";
      const name = page.nameOf(which);
      save(name === which ? which + ending : name, texts[which] ?? "", "text/plain");
      page.store.unsaved.delete(which);
    });
    return button;
  }));
}

export function startTake(page: Page, source: Blob): void {
  const { store, engines } = page;
  const told = element("taken");
  const label = (): string => page.facts.player?.label ?? "";

  async function saveSheet(): Promise<void> {
    told.textContent = "The lesson sheet is being written.";
    const { columns: _, ...request } = roundRequest(store.open, "report", 0);
    request["options"] = { ...(request["options"] as object), plan: store.open.settings.plan };
    const reply = await engines.ask("sheet", request);
    if (reply === null) return;
    const html = reply["sheet"];
    if (reply.status !== 0 || typeof html !== "string") {
      const why = reply.findings.map(({ message }) => message).join("; ");
      told.textContent = `There is no lesson sheet: ${why || reply.message}`;
      return;
    }
    save(fileNameOf(label(), ".html"), html, "text/html");
    told.textContent = "The lesson sheet was saved.";
  }
  onClick("save-sheet", () => void saveSheet());
  onClick("print", () => window.print());
  async function saveCopy(): Promise<void> {
    save(fileNameOf(label(), "-page.html"), copyWith(page, await source.text()), "text/html");
    store.unsaved.clear();
    told.textContent = "The copy was saved. It opens anywhere, with this golfer and this course.";
  }
  onClick("save-copy", () => void saveCopy());
  onClick("clear", () => {
    store.clear();
    told.textContent = "All that was entered is forgotten.";
  });
  store.onChange(() => showFiles(page));
  showFiles(page);
}
