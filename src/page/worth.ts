// Ways to spend money and hours, side by side.

import { onClick } from "./fields";
import { type Page, textsFor } from "./page";
import { columnsOf, element, resultIn, showFindings } from "./show";
import { textEditor } from "./who";

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
      command: "weigh", ...textsFor(store.open, ["course", "player", "baseline", "options_file"]),
      options: { ...tee, ...strokeWorth, plan: "habit" }, columns: columnsOf(element("weigh-result")),
    });
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
    const found = reply.findings.filter((finding) => finding.file === page.nameOf("options_file"));
    editor.showFindings(found);
    showFindings(element("options-findings"), found, (finding) => editor.goTo(finding));
  }

  worth.addEventListener("input", () => store.change((open) => { open.settings.strokeWorth = worth.value; }));
  onClick("weigh", () => void weigh());
  const show = (): void => {
    editor.set(store.open.texts.options_file ?? "");
    if (document.activeElement !== worth) worth.value = store.open.settings.strokeWorth;
  };
  store.onChange(show);
  show();
}
