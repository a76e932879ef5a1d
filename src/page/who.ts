// The golfer and the course: chosen, dropped, written by a form, or edited.

import { courses, players, titleOf } from "./built_in";
import { forgetCourse, type TextName } from "./case";
import { editorIn, type Editor } from "./editor";
import type { Finding, Reply, Request } from "./engines";
import { afterRest, onChoice, setChoices } from "./fields";
import { startForms } from "./forms";
import type { Page } from "./page";
import { element, showFindings, showPicture } from "./show";

const restBeforeCheck = 200; // milliseconds
const own = "own";

function choicesOf(builtIn: Record<string, string>, text: string): { value: string; words: string }[] {
  const choices = Object.entries(builtIn).map(([value, inside]) => ({ value, words: titleOf(inside) }));
  const known = Object.values(builtIn).includes(text);
  return known ? choices : [...choices, { value: own, words: `${titleOf(text) || "without a name"} (your own)` }];
}

function chosenOf(builtIn: Record<string, string>, text: string): string {
  return Object.entries(builtIn).find(([, inside]) => inside === text)?.[0] ?? own;
}

// The picture of the course has its holes below each other: the one that is edited comes into view.
function showHoleEdited(editor: Editor, text: string): void {
  const before = text.split("\n").slice(0, editor.line()).join("\n");
  const at = [...before.matchAll(/\bnumber: *\d+/g)].length - 1;
  const svg = element("course-picture").shadowRoot?.querySelector("svg");
  const hole = svg ? [...svg.children].filter((child) => child.tagName === "g")[at] : undefined;
  if (hole === undefined) return;
  const strip = element("course-strip");
  strip.scrollTop += hole.getBoundingClientRect().top - strip.getBoundingClientRect().top;
}

function withFile(findings: Finding[], name: string): Finding[] {
  return findings.filter((finding) => finding.file === name);
}

// An editor for one of the texts, with what was found in it below.
export function textEditor(page: Page, which: TextName, host: string, name: string, moved?: () => void): Editor {
  return editorIn(element(host), name, (text) => {
    page.store.change((open) => { open.texts[which] = text; }, which);
  }, moved);
}

export function startWho(page: Page): void {
  const { store, engines } = page;
  const text = (which: TextName): string => store.open.texts[which] ?? "";
  const player = textEditor(page, "player", "player-editor", "The golfer's file");
  const course: Editor = textEditor(page, "course", "course-editor", "The course's file",
    () => showHoleEdited(course, text("course")));

  function take(which: "player" | "course", builtIn: Record<string, string>, value: string): void {
    const inside = builtIn[value];
    if (inside === undefined) return;
    store.unsaved.delete(which);
    store.change((open) => {
      open.texts[which] = inside;
      open.names[which] = value;
      if (which === "course") forgetCourse(open.settings);
    });
  }
  const playerList = onChoice("player", (value) => take("player", players, value));
  const courseList = onChoice("course-choice", (value) => take("course", courses, value));
  const teeList = onChoice("tee", (value) => store.change((open) => { open.settings.tee = value; }));

  function showChecked(which: "player" | "course", editor: Editor, reply: Reply): void {
    const found = withFile(reply.findings, page.nameOf(which));
    editor.showFindings(found);
    showFindings(element(`${which}-findings`), found, (finding) => editor.goTo(finding));
    element(`${which}-understood`).textContent = reply.status === 0
      ? reply.answer.understood[which] : "There are faults in it; see the file.";
    if (reply.status !== 0) element<HTMLDetailsElement>(`${which}-details`).open = true;
  }

  const checkRequest = (which: "player" | "course", pictures: boolean): Request => ({
    command: "check", [which]: text(which), names: { [which]: page.nameOf(which) }, options: { pictures },
  });

  async function check(which: "player" | "course", editor: Editor): Promise<void> {
    const looked = text(which);
    const reply = await engines.askQuickly(`check ${which}`, checkRequest(which, false));
    if (reply === null) return;
    showChecked(which, editor, reply);
    page.learn(which, looked, reply.status === 0 ? reply.answer[which] : null);
  }

  // After the course has asked for its answer, which is waited for.
  let drawn = "";
  async function drawCourse(): Promise<void> {
    if (page.understood() === null || drawn === text("course")) return;
    drawn = text("course");
    const reply = await engines.askQuickly("course drawn", checkRequest("course", true));
    if (reply?.status === 0) showPicture(element("course-picture"), reply.pictures?.["course"] ?? "");
  }

  const checked: Partial<Record<TextName, string>> = {};
  const checkNew = (): void => {
    for (const [which, editor] of [["course", course], ["player", player]] as const) {
      if (checked[which] === text(which)) continue;
      checked[which] = text(which);
      void check(which, editor);
    }
  };
  const checkSoon = afterRest(restBeforeCheck, checkNew);

  function show(): void {
    player.set(text("player"));
    course.set(text("course"));
    setChoices(playerList, choicesOf(players, text("player")), chosenOf(players, text("player")));
    setChoices(courseList, choicesOf(courses, text("course")), chosenOf(courses, text("course")));
    const tees = page.facts.course?.tees ?? [];
    const usual = { value: "", words: "those for the golfer" };
    setChoices(teeList, [usual, ...tees.map((tee) => ({ value: tee, words: tee }))], store.open.settings.tee);
  }
  store.onChange(() => { show(); checkSoon(); });
  page.onFacts(() => {
    show();
    void drawCourse();
  });
  startForms(page);
  show();
  checkNew();
}

