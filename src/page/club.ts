// What the club's golfers gain, by tee, and what a hazard somewhere else would do to whom.

import { members } from "./built_in";
import type { Request } from "./engines";
import { onChoice, onClick, setChoices, slider } from "./fields";
import { startHazard } from "./hazard";
import { type Page, textsFor } from "./page";
import { columnsOf, element, resultIn } from "./show";

function bandOptions(page: Page): Request {
  const { bandDriver, bandTee } = page.store.open.settings;
  return { driver: bandDriver, ...(bandTee === "" ? {} : { tee: bandTee }) };
}

function startBands(page: Page): void {
  const { store, engines } = page;
  const place = element("bands-result");
  const result = resultIn(place, "The club's golfers", ["bands"]);
  const driver = slider("band-driver", (value) => store.change((open) => { open.settings.bandDriver = value; }));
  const tees = onChoice("band-tee", (value) => store.change((open) => { open.settings.bandTee = value; }));

  async function ask(texts: Request, options: Request): Promise<void> {
    result.wait(true);
    const reply = await engines.ask("bands", {
      command: "bands", ...textsFor(store.open, ["course"]), ...texts, options: { ...bandOptions(page), ...options },
      columns: columnsOf(place),
    });
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
  }
  onClick("bands", () => void ask({}, { gender: element<HTMLSelectElement>("band-gender").value, pictures: true }));
  onClick("members", () => void ask({ members: store.open.texts.members ?? members }, {}));
  const show = (): void => {
    driver.set(store.open.settings.bandDriver);
    const names = page.facts.course?.tees ?? [];
    const all = { value: "", words: "all tees" };
    setChoices(tees, [all, ...names.map((name) => ({ value: name, words: `the ${name} tees` }))],
      store.open.settings.bandTee);
  };
  store.onChange(show);
  page.onFacts(show);
  show();
}

export function startClub(page: Page): void {
  startBands(page);
  startHazard(page);
}
