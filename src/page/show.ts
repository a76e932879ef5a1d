// Answers of the library as they come: its sentences, tables and pictures, unchanged.

import type { Finding, Reply } from "./engines";

export function element<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no element "${id}"`);
  return found as T;
}

export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K, words = "", kind = "",
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  made.textContent = words;
  if (kind !== "") made.className = kind;
  return made;
}

const pictureStyle = new CSSStyleSheet();
pictureStyle.replaceSync(`
  svg { display: block; width: 100%; height: auto; }
  [data-hazard] { cursor: grab; }
`);

// A picture has a tree of its own, since pictures may use the same names inside.
export function showPicture(host: HTMLElement, svg: string): void {
  const root = host.shadowRoot ?? host.attachShadow({ mode: "open" });
  root.adoptedStyleSheets = [pictureStyle];
  root.innerHTML = svg;
  host.hidden = svg === "";
}

// How many characters of a table fit beside each other where it is shown.
const fewestColumns = 40;
const mostColumns = 100;

// So many that the width of one is told well, and no telephone is too narrow for them: what is wider would scroll it.
const probed = 20;

export function columnsOf(place: HTMLElement): number {
  const probe = make("pre", "0".repeat(probed), "probe");
  document.body.append(probe);
  const character = probe.getBoundingClientRect().width / probed;
  probe.remove();
  const room = place.clientWidth || document.documentElement.clientWidth;
  return Math.min(mostColumns, Math.max(fewestColumns, Math.floor(room / character) - 1));
}

function findingItem(finding: Finding, goTo?: (finding: Finding) => void): HTMLElement {
  const item = make("li", "", finding.severity);
  if (goTo !== undefined && finding.line > 0) {
    const button = make("button", finding.message, "finding");
    button.type = "button";
    button.addEventListener("click", () => goTo(finding));
    item.append(button);
  } else {
    item.textContent = finding.message;
  }
  return item;
}

const mostShown = 12;

export function showFindings(list: HTMLElement, findings: Finding[], goTo?: (finding: Finding) => void): void {
  list.replaceChildren(...findings.slice(0, mostShown).map((finding) => findingItem(finding, goTo)));
  if (findings.length > mostShown) list.append(make("li", `and ${findings.length - mostShown} more`));
}

// What a reply says, piece by piece, in a part of a screen that stays: details that were opened stay open.
export interface Result {
  show(reply: Reply): void;
  // While something newer is worked out.
  wait(waiting: boolean): void;
}

export function resultIn(place: HTMLElement, name: string, pictures: string[] = []): Result {
  const sentences = make("div", "", "sentences");
  sentences.setAttribute("role", "status");
  const findings = make("ul", "", "findings");
  const frames = new Map(pictures.map((picture) => [picture, make("div", "", "picture")]));
  const details = make("details", "", "numbers");
  const table = make("pre");
  table.tabIndex = 0;
  table.setAttribute("role", "region");
  table.setAttribute("aria-label", `${name}: all numbers`);
  details.append(make("summary", "All the numbers"), table);
  const cautions = make("ul", "", "cautions");
  details.hidden = true;
  place.append(sentences, findings, ...frames.values(), details, cautions);
  for (const frame of frames.values()) frame.hidden = true;

  function showAnswer(reply: Reply): void {
    const told = reply.sentences ?? [];
    sentences.replaceChildren(...told.map((words, at) => make("p", words, at === 0 ? "lead" : "")));
    for (const [picture, frame] of frames) showPicture(frame, reply.pictures?.[picture] ?? "");
    table.textContent = reply.text ?? "";
    details.hidden = table.textContent === "";
    const words: string[] = reply.answer?.cautions ?? [];
    cautions.replaceChildren(...words.map((caution) => make("li", caution)));
  }

  return {
    show(reply) {
      this.wait(false);
      place.classList.toggle("refused", reply.status !== 0);
      showFindings(findings, reply.findings ?? []);
      if (reply.status === 0) showAnswer(reply);
      else sentences.replaceChildren(make("p", reply.message ?? "", "lead"));
    },
    wait(waiting) {
      place.classList.toggle("waiting", waiting);
      place.setAttribute("aria-busy", String(waiting));
    },
  };
}
