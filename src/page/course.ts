// What a change is worth on the course: the hole in view at once, the round after it, then all other holes.

import type { Settings } from "./case";
import type { Reply, Request } from "./engines";
import { afterRest, onChoice, onClick, oneAtATime, setChoices, slider } from "./fields";
import { draws, type Page, roundRequest } from "./page";
import { askRound } from "./round";
import { columnsOf, element, make, resultIn, type Result, showPicture } from "./show";

const restBeforeMaps = 1000; // milliseconds: all of them take longer than the round
const restBeforeRound = 150; // milliseconds that a slider rests

// settled: a slider was let go.
function startSettings(page: Page, settled: () => void): void {
  const { store } = page;
  const driver = slider("driver", (value) => store.change((open) => { open.settings.driver = value; }), settled);
  const irons = slider("irons", (value) => store.change((open) => { open.settings.irons = value; }), settled);
  const hole = onChoice("hole", (value) => store.change((open) => { open.settings.hole = Number(value); }));
  const plan = onChoice("plan", (value) => store.change((open) => { open.settings.plan = value; }));
  const sources = [...document.querySelectorAll<HTMLInputElement>("input[name=change]")];
  for (const source of sources) {
    source.addEventListener("change", () => store.change((open) => {
      open.settings.change = source.value as Settings["change"];
    }));
  }
  const show = (): void => {
    const { settings } = store.open;
    driver.set(settings.driver);
    irons.set(settings.irons);
    plan.value = settings.plan;
    for (const source of sources) source.checked = source.value === settings.change;
    element("carry-sliders").hidden = settings.change !== "said";
    const holes = page.facts.course?.holes ?? [];
    const choices = holes.map(({ number, par }) => ({ value: String(number), words: `${number}, par ${par}` }));
    setChoices(hole, choices, String(settings.hole));
  };
  store.onChange(show);
  page.onFacts(show);
  show();
}

// Small pictures of all holes, by their numbers: each a button that brings its hole into view.
type Maps = Map<number, HTMLElement>;

function makeMaps(page: Page, maps: Maps): void {
  maps.clear();
  const buttons = (page.facts.course?.holes ?? []).map(({ number }) => {
    const button = make("button", "", "map");
    button.type = "button";
    button.setAttribute("aria-label", `Hole ${number} into view`);
    const picture = make("div");
    maps.set(number, picture);
    button.append(picture);
    button.addEventListener("click", () => {
      page.store.change((open) => { open.settings.hole = number; });
      element("hole-heading").scrollIntoView({ block: "nearest" });
    });
    return button;
  });
  element("maps").replaceChildren(...buttons);
}

function showSmall(maps: Maps, reply: Reply | null): void {
  for (const [number, map] of maps) {
    const picture = reply?.pictures?.[`small_${number}`];
    if (picture === undefined) continue;
    showPicture(map, picture);
    map.parentElement?.classList.add("drawn");
  }
}

function withOptions(request: Request, options: Request): Request {
  return { ...request, options: { ...(request["options"] as Request), ...options, pictures: true, threads: 1 } };
}

// One hole drawn; the same request whoever asks, so that a hole that was drawn comes at once.
function holeRequest(page: Page, number: number): Request {
  const request = roundRequest(page.store.open, "strategy", columnsOf(element("hole-result")));
  return { ...withOptions(request, { tee_shot_alone: true }), holes: [number] };
}

// The requests whose answers are waited for or there, and those whose answers are shown.
interface Asked {
  hole: string;
  holeShown: string;
  round: string;
  roundShown: string;
}

// Returns what asks about the hole in view; shown: its answer is there.
function followHole(page: Page, maps: Maps, asked: Asked, shown: () => void): () => void {
  const picture = make("div", "", "picture");
  element("hole-result").append(picture);
  const result = resultIn(element("hole-result"), "The hole");
  return oneAtATime(async () => {
    const number = page.store.open.settings.hole;
    const request = holeRequest(page, number);
    if (asked.hole === JSON.stringify(request)) return;
    asked.hole = JSON.stringify(request);
    result.wait(true);
    const reply = await page.engines.askQuickly("hole", request);
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
    if (reply.status === 0) {
      showPicture(picture, reply.pictures?.[`hole_${number}`] ?? "");
      showSmall(maps, reply);
    }
    asked.holeShown = JSON.stringify(request);
    shown();
  });
}

// Returns what asks about the round, and then about all holes one by one.
function followRound(page: Page, maps: Maps, asked: Asked, result: Result): () => void {
  const { store, engines } = page;
  const drawSoon = afterRest(restBeforeMaps, () => {
    if (asked.round !== asked.roundShown) return; // a newer round comes first, and draws them after it
    const questions = [...maps.keys()].map((number) => holeRequest(page, number));
    for (const hole of engines.askAll("maps", questions)) void hole.then((drawn) => showSmall(maps, drawn));
  });
  return async () => {
    const holes = page.facts.course?.holes ?? [];
    const request = withOptions(roundRequest(store.open, "gain", columnsOf(element("round-result"))),
      { plan: store.open.settings.plan });
    if (asked.round === JSON.stringify(request)) return;
    asked.round = JSON.stringify(request);
    result.wait(true);
    engines.drop("maps");
    const reply = await askRound(engines, "round", request, holes);
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
    if (reply.status !== 0) return;
    showPicture(element("round-picture"), reply.pictures?.["gain"] ?? "");
    asked.roundShown = JSON.stringify(request);
    drawSoon();
  };
}

// How sure strokes are that were measured: a round for each of many draws, which takes a while.
function startSure(page: Page): void {
  const told = element("sure-words");
  const show = (): void => {
    const { settings, texts } = page.store.open;
    element("sure-part").hidden = settings.change !== "logs" || !texts.log;
  };
  onClick("sure", () => {
    const request = roundRequest(page.store.open, "gain", columnsOf(told));
    const options = { ...(request["options"] as Request), plan: "habit", draws, threads: 1 };
    told.textContent = "Working it out ...";
    void page.engines.ask("sure", { ...request, options }).then((reply) => {
      if (reply !== null) told.textContent = reply.status === 0 ? (reply.sentences?.[1] ?? "") : (reply.message ?? "");
    });
  });
  page.store.onChange(() => {
    told.textContent = "";
    page.engines.drop("sure");
    show();
  });
  show();
}

// Why nothing can be asked yet, if so; nothing to be told while texts are being looked at.
function hindrance(page: Page): string | null {
  if (page.understood() === false) return "The course or the golfer has faults: see who and where.";
  const { settings, texts } = page.store.open;
  return settings.change === "logs" && !texts.log ? "There are no logs in the bay yet." : null;
}

export function startCourse(page: Page): void {
  startSure(page);
  const maps: Maps = new Map();
  const round = resultIn(element("round-result"), "The round");
  const asked: Asked = { hole: "", holeShown: "", round: "", roundShown: "" };
  const askRoundNow = followRound(page, maps, asked, round);
  // The hole in view first: where it takes longer than a slider rests, the round comes after it.
  let roundIsNext = false;
  const askHole = followHole(page, maps, asked, () => {
    if (roundIsNext) askRoundNow();
    roundIsNext = false;
  });
  const askRoundSoon = afterRest(restBeforeRound, () => {
    if (asked.holeShown === asked.hole) askRoundNow();
    else roundIsNext = true;
  });
  let drawn = page.facts.course;

  const ask = (settled = false): void => {
    if (page.understood() === null) return;
    const why = hindrance(page);
    if (why !== null) {
      asked.round = "";
      roundIsNext = false;
      round.show({ status: 2, message: why, findings: [] });
      return;
    }
    // Where the last answer of many is on its way, those before are waited for no longer.
    const { hole } = page.store.open.settings;
    if (settled && asked.hole !== JSON.stringify(holeRequest(page, hole))) page.engines.drop("hole");
    askHole();
    if (settled) askRoundNow();
    else askRoundSoon();
  };
  startSettings(page, () => ask(true));
  page.store.onChange(() => ask());
  page.onFacts(() => {
    if (page.facts.course !== drawn) makeMaps(page, maps);
    drawn = page.facts.course;
    ask();
  });
}
