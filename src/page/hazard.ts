// A hazard somewhere else: dragged on the drawing of its hole, or moved by keys, sliders and numbers, and what it then
// does to whom. The library draws it where it is put, and tells where that is.

import type { HazardMove } from "./case";
import type { Request } from "./engines";
import { onChoice, onClick, oneAtATime, setChoices, slider } from "./fields";
import { type Page, textsFor } from "./page";
import type { HazardFacts, HoleFacts } from "./round";
import { columnsOf, element, resultIn, showPicture } from "./show";

const bandsBesideHazard = ["scratch", "6-12", "13-20", "21 and over"];
const tenth = 10;
const stride = 10; // of the page keys, in the course's units

const nowhere: HazardMove = { hole: 0, hazard: 0, along: 0, right: 0 };

interface Vector {
  x: number;
  y: number;
}

// What the pictures of moved hazards have by name (docs/embedding.md, "Hazards moved by hand"): "x,y".
function vectorOf(mark: string | undefined): Vector {
  const [x = 0, y = 0] = (mark ?? "").split(",").map(Number);
  return { x, y };
}

// How often the one goes into the other, along it.
const shareOf = (way: Vector, of: Vector): number => (way.x * of.x + way.y * of.y) / (of.x * of.x + of.y * of.y);

// What takes a pointer in the drawing, and tells how far a hazard was dragged, in the course's units.
interface Handle {
  number: () => number; // of the hazard in hand
  pick(number: number): void;
  drag(along: number, right: number): void;
}

function startDragging(map: HTMLElement, handle: Handle): void {
  let pointer: number | null = null;
  let last: Vector = { x: 0, y: 0 };

  const drawn = (): SVGSVGElement | null => map.shadowRoot?.querySelector("svg") ?? null;
  const hazardAt = (event: Event): number | null => {
    const marked = event.composedPath().find((part): part is SVGElement =>
      part instanceof SVGElement && part.dataset["hazard"] !== undefined);
    return marked === undefined ? null : Number(marked.dataset["hazard"]);
  };
  const inDrawing = (event: PointerEvent): Vector | null => {
    const matrix = drawn()?.getScreenCTM();
    return matrix ? new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse()) : null;
  };

  map.addEventListener("pointerdown", (event) => {
    const number = hazardAt(event);
    const at = inDrawing(event);
    if (event.button !== 0 || pointer !== null || number === null || at === null) return;
    // Elsewhere than on the grip a finger scrolls the page, or picks a hazard by a tap.
    if (number !== handle.number() && event.pointerType !== "mouse") return;
    handle.pick(number);
    event.preventDefault();
    map.focus({ preventScroll: true });
    map.setPointerCapture(event.pointerId);
    pointer = event.pointerId;
    last = at;
  });
  // A finger on the grip scrolls nothing. touch-action would say so, but not of a part of a drawing.
  map.addEventListener("touchstart", (event) => {
    if (hazardAt(event) === handle.number()) event.preventDefault();
  }, { passive: false });
  map.addEventListener("pointermove", (event) => {
    if (event.pointerId !== pointer) return;
    const held = drawn()?.querySelector<SVGElement>(`[data-held="${handle.number()}"]`);
    const at = inDrawing(event);
    if (!held || at === null) return; // not drawn yet: what is dragged meanwhile counts when it is
    const way = { x: at.x - last.x, y: at.y - last.y };
    last = at;
    handle.drag(shareOf(way, vectorOf(held.dataset["along"])), shareOf(way, vectorOf(held.dataset["right"])));
  });
  for (const end of ["pointerup", "pointercancel"] as const) {
    map.addEventListener(end, (event) => {
      if (event.pointerId !== pointer) return;
      pointer = null;
    });
  }
  map.addEventListener("click", (event) => {
    const number = hazardAt(event);
    if (number !== null) handle.pick(number);
  });
}

const steps: Record<string, [along: number, right: number]> = {
  ArrowUp: [1, 0], ArrowDown: [-1, 0], ArrowRight: [0, 1], ArrowLeft: [0, -1], PageUp: [stride, 0], PageDown: [-stride, 0],
};

function firstChoice(hole: HoleFacts | undefined): number {
  const bunker = hole?.hazards.findIndex(({ kind }) => kind === "bunker") ?? -1;
  return Math.max(bunker, 0) + 1;
}

export function startHazard(page: Page): void {
  const { store, engines } = page;
  const place = element("hazard-result");
  const map = element("hazard-map");
  const result = resultIn(place, "The hazard", ["bands"]);
  const move: HazardMove = { ...nowhere };
  let told = ""; // the request whose answer is shown, or comes

  const holesWithHazards = (): HoleFacts[] =>
    (page.facts.course?.holes ?? []).filter(({ hazards }) => hazards.length > 0);
  const holeFacts = (): HoleFacts | undefined => holesWithHazards().find(({ number }) => number === move.hole);
  const asItIs = (): HazardFacts | undefined => holeFacts()?.hazards[move.hazard - 1];
  const isMoved = (): boolean => move.along !== 0 || move.right !== 0;
  let dragged = { along: 0, right: 0 }; // where a pointer has it; it is moved by whole units

  const hole = onChoice("hazard-hole", (value) => {
    Object.assign(move, { hole: Number(value), along: 0, right: 0 });
    choose(firstChoice(holeFacts()));
  });
  const list = onChoice("hazard", (value) => choose(Number(value)));
  const from = slider("hazard-from", (value) => moveTo(value - (asItIs()?.from ?? 0), move.right));
  const right = slider("hazard-right", (value) => moveTo(move.along, value - (asItIs()?.right ?? 0)));

  function showPlace(facts: HazardFacts): void {
    from.set(Math.round(facts.from * tenth) / tenth);
    right.set(Math.round(facts.right * tenth) / tenth);
    map.setAttribute("aria-valuenow", String(Math.round(facts.from)));
    map.setAttribute("aria-valuetext", facts.words);
    element("hazard-place").textContent = facts.words;
  }

  const draw = oneAtATime(async () => {
    const hazards = [{ ...move }];
    const request = { command: "check", ...textsFor(store.open, ["course"]) };
    const options = { hole: move.hole, hazards, pictures: true };
    const reply = await engines.askQuickly("hazard drawn", { ...request, options });
    if (reply === null || hazards[0]?.hole !== move.hole) return;
    const facts = (reply.answer?.course as { holes: HoleFacts[] } | undefined)?.holes
      .find(({ number }) => number === move.hole)?.hazards[move.hazard - 1];
    if (reply.status !== 0 || facts === undefined) {
      element("hazard-place").textContent = reply.findings[0]?.message ?? reply.message ?? "";
      return;
    }
    showPicture(map, reply.pictures?.["hole"] ?? "");
    showPlace(facts);
  });

  // Follows while a finger moves, one answer after the other.
  const answer = oneAtATime(async () => {
    place.hidden = !isMoved();
    store.change((open) => { open.settings.hazard = { ...move }; });
    if (!isMoved()) {
      told = "";
      engines.drop("hazard");
      return;
    }
    const { bandTee } = store.open.settings;
    const options: Request = {
      tee: bandTee === "" ? page.facts.course?.tees[0] : bandTee, band: bandsBesideHazard, hazards: [{ ...move }],
      changed_holes_alone: true, gender: element<HTMLSelectElement>("band-gender").value, pictures: true,
    };
    const request = { command: "bands", ...textsFor(store.open, ["course"]), columns: columnsOf(place), options };
    if (told === JSON.stringify(request)) return;
    told = JSON.stringify(request);
    result.wait(true);
    const reply = await engines.ask("hazard", request);
    if (reply === null) return;
    result.wait(false);
    result.show(reply);
  });

  function moveTo(along: number, toTheRight: number): void {
    Object.assign(move, { along, right: asItIs()?.side === "across" ? 0 : toTheRight });
    draw();
    answer();
  }

  // Another hazard of the hole in hand, where the file has it.
  function choose(hazard: number): void {
    if (hazard !== move.hazard) Object.assign(move, { hazard, along: 0, right: 0 });
    show();
    answer();
  }

  function show(): void {
    const holes = holesWithHazards();
    element("hazard-none").hidden = holes.length > 0;
    element("hazard-part").hidden = holes.length === 0;
    setChoices(hole, holes.map(({ number, par }) => ({ value: String(number), words: `${number}, par ${par}` })),
      String(move.hole));
    const hazards = holeFacts()?.hazards ?? [];
    setChoices(list, hazards.map(({ words }, at) => ({ value: String(at + 1), words: `${at + 1}: ${words}` })),
      String(move.hazard));
    element<HTMLInputElement>("hazard-right").disabled = asItIs()?.side === "across";
    element<HTMLInputElement>("hazard-right-number").disabled = asItIs()?.side === "across";
    const length = String(Math.ceil(holeFacts()?.length ?? 0));
    element<HTMLInputElement>("hazard-from").max = length;
    map.setAttribute("aria-valuemax", length);
    map.setAttribute("aria-label", `Hazard ${move.hazard} of hole ${move.hole}`);
    if (asItIs() !== undefined) draw();
  }

  startDragging(map, {
    number: () => move.hazard,
    pick(number) {
      if (number !== move.hazard) choose(number);
      dragged = { along: move.along, right: move.right };
    },
    drag(along, toTheRight) {
      dragged = { along: dragged.along + along, right: dragged.right + toTheRight };
      moveTo(Math.round(dragged.along), Math.round(dragged.right));
    },
  });
  map.addEventListener("keydown", (event) => {
    const step = steps[event.key];
    if (event.key === "Home") moveTo(0, 0);
    else if (step !== undefined) moveTo(move.along + step[0], move.right + step[1]);
    else return;
    event.preventDefault();
  });
  onClick("hazard-back", () => moveTo(0, 0));
  // Who is asked about is chosen for the bands above.
  for (const id of ["band-tee", "band-gender"]) element(id).addEventListener("change", answer);

  // What was kept, where the course has such a hazard; otherwise the first one.
  page.onFacts(() => {
    if (page.understood() === null) return;
    Object.assign(move, store.open.settings.hazard ?? nowhere);
    if (asItIs() === undefined) {
      const first = holesWithHazards()[0];
      Object.assign(move, { hole: first?.number ?? 0, hazard: firstChoice(first), along: 0, right: 0 });
    }
    show();
    place.hidden = !isMoved();
    if (isMoved()) answer();
  });
}
