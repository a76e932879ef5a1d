// The page's start. It computes nothing and draws nothing: texts and settings go to the library in workers, and what
// comes back is shown.

import { startBay } from "./bay";
import { firstCase } from "./built_in";
import { startClub } from "./club";
import { startCourse } from "./course";
import { startEngines } from "./engines";
import { startFiles } from "./files";
import { makePage, type Page } from "./page";
import { element } from "./show";
import { startSteps } from "./steps";
import { openStore } from "./store";
import { startTake } from "./take";
import { startWho } from "./who";
import { startWorth } from "./worth";

// The page as it came, before anything in it changes: for copies of it. A blob is kept outside of the page's memory.
const source = new Blob([`<!DOCTYPE html>\n${document.documentElement.outerHTML}\n`]);

function caseInside(): unknown {
  return JSON.parse(element("case").textContent ?? "null");
}

function showWhose(page: Page): void {
  const { player, course } = page.facts;
  element("whose").textContent = player && course ? `${player.label} on ${course.name}` : "";
  if (!page.store.kept) {
    element("kept").textContent = "This browser keeps nothing of what was entered: save it as files, or as a copy.";
  }
}

async function start(): Promise<void> {
  startSteps();
  const store = openStore(caseInside(), firstCase());
  const page = makePage(store, await startEngines());
  page.engines.onTrouble((words) => { element("trouble").textContent = words; });
  page.onFacts(() => showWhose(page));
  store.onChange(() => showWhose(page));
  startCourse(page); // first, since its answer is
  startBay(page);
  startWorth(page);
  startClub(page);
  startTake(page, source);
  startFiles(page);
  startWho(page);
}

start().catch((error: unknown) => {
  const why = error instanceof Error ? error.message : String(error);
  element("trouble").textContent = `The page could not start: ${why}`;
});
