// What the club's golfers gain, by tee, and what a hazard somewhere else would do to whom.

import { members } from "./built_in";
import type { Reply, Request } from "./engines";
import { afterRest, onChoice, onClick, setChoices, slider } from "./fields";
import { type Page, textsFor } from "./page";
import type { HoleFacts } from "./round";
import { columnsOf, element, resultIn } from "./show";

const restBeforeHazard = 250; // milliseconds
const bandsBesideHazard = ["scratch", "6-12", "13-20", "21 and over"];

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

type HazardFacts = HoleFacts["hazards"][number];

function hazardWords(hazard: HazardFacts, at: number): string {
  const kind = hazard.kind.replaceAll("_", " ");
  return hazard.side === undefined ? `${at + 1}: ${kind}, by its corners` : `${at + 1}: ${kind}, ${hazard.side}`;
}

function startHazard(page: Page): void {
  const { store, engines } = page;
  const place = element("hazard-result");
  const result = resultIn(place, "The hazard", ["bands"]);
  const hole = onChoice("hazard-hole", () => { chooseHazards(); });
  const list = onChoice("hazard", () => { startWhereItIs(); });
  const from = slider("hazard-from", (value) => { begins = value; moveSoon(); });
  let begins = 0;

  const holeFacts = (): HoleFacts | undefined =>
    page.facts.course?.holes.find(({ number }) => String(number) === hole.value);
  const hazardFacts = (): HazardFacts | undefined => holeFacts()?.hazards[Number(list.value)];

  // Only a strip has a beginning and an end along the hole.
  function startWhereItIs(): void {
    begins = hazardFacts()?.from ?? 0;
    const range = element<HTMLInputElement>("hazard-from");
    range.disabled = hazardFacts()?.from === undefined;
    range.max = String(Math.ceil(holeFacts()?.length ?? 600));
    from.set(begins);
  }
  function chooseHazards(): void {
    const hazards = holeFacts()?.hazards ?? [];
    setChoices(list, hazards.map((hazard, at) => ({ value: String(at), words: hazardWords(hazard, at) })), "0");
    startWhereItIs();
  }

  async function move(): Promise<void> {
    const hazard = hazardFacts();
    if (hazard?.from === undefined || hazard.to === undefined) return;
    const to = hazard.to + begins - hazard.from;
    const moved = { hole: Number(hole.value), hazard: Number(list.value) + 1, from: begins, to };
    const gender = element<HTMLSelectElement>("band-gender").value;
    const { bandTee } = store.open.settings;
    const tee = bandTee === "" ? page.facts.course?.tees[0] : bandTee;
    result.wait(true);
    const reply: Reply | null = await engines.ask("hazard", {
      command: "bands", ...textsFor(store.open, ["course"]), columns: columnsOf(place),
      options: { tee, gender, band: bandsBesideHazard, hazards: [moved] },
    });
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
  }
  const moveSoon = afterRest(restBeforeHazard, () => void move());

  page.onFacts(() => {
    const all = page.facts.course?.holes ?? [];
    const holes = all.filter(({ hazards }) => hazards.some(({ side }) => side !== undefined));
    setChoices(hole, holes.map(({ number, par }) => ({ value: String(number), words: `${number}, par ${par}` })),
      hole.value || String(holes[0]?.number ?? ""));
    chooseHazards();
  });
}

export function startClub(page: Page): void {
  startBands(page);
  startHazard(page);
}
