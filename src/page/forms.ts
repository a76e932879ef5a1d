// Forms that write a golfer's or a course's file. What is wrong with it the library says, beside its line.

import { forgetCourse } from "./case";
import type { Page } from "./page";
import { onChoice, onClick } from "./fields";
import { element, make } from "./show";

const clubs = [
  "driver", "3-wood", "5-wood", "4-hybrid", "5-iron", "6-iron", "7-iron", "8-iron", "9-iron", "pitching wedge",
  "52-degree wedge", "sand wedge", "60-degree wedge",
];

const valueOf = (id: string): string => element<HTMLInputElement | HTMLSelectElement>(id).value.trim();
const quoted = (text: string): string => JSON.stringify(text);

function numberField(id: string, words: string): HTMLLabelElement {
  const label = make("label", `${words} `);
  const input = make("input");
  input.id = id;
  input.inputMode = "decimal";
  input.autocomplete = "off";
  label.append(input);
  return label;
}

function playerText(): string {
  const carries = clubs.map((club, at) => ({ club, carry: valueOf(`form-carry-${at}`) }));
  const bag = carries.filter(({ carry }) => carry !== "");
  return [
    "format: yardworth/player/1",
    `label: ${quoted(valueOf("form-label"))}`,
    `handicap_index: ${valueOf("form-index")}`,
    `gender: ${valueOf("form-gender")}`,
    `units: ${valueOf("form-units")}`,
    "clubs:",
    ...bag.map(({ club, carry }) => `  - {club: ${club}, carry: ${carry}}`),
    "",
  ].join("\n");
}

function cardRow(number: number): HTMLElement {
  const row = make("div", "", "card-row");
  const par = make("select");
  par.id = `card-par-${number}`;
  par.append(...[3, 4, 5, 6].map((one) => make("option", String(one))));
  par.value = "4";
  const parLabel = make("label", `Hole ${number}, par `);
  parLabel.append(par);
  row.append(parLabel, numberField(`card-length-${number}`, "length"));
  return row;
}

function showCard(count: number): void {
  const rows = element("card-holes");
  while (rows.childElementCount > count) rows.lastElementChild?.remove();
  while (rows.childElementCount < count) rows.append(cardRow(rows.childElementCount + 1));
}

function courseText(): string {
  const tee = quoted(valueOf("card-tee"));
  const holes = Array.from({ length: Number(valueOf("card-count")) }, (_, at) => at + 1);
  return [
    "format: yardworth/course/1",
    `name: ${quoted(valueOf("card-name"))}`,
    `units: ${valueOf("card-units")}`,
    "tees:",
    `  - {name: ${tee}}`,
    "holes:",
    ...holes.map((number) => {
      const length = `length: {${tee}: ${valueOf(`card-length-${number}`)}}`;
      return `  - {number: ${number}, par: ${valueOf(`card-par-${number}`)}, ${length}}`;
    }),
    "",
  ].join("\n");
}

export function startForms(page: Page): void {
  element("form-clubs").append(...clubs.map((club, at) => numberField(`form-carry-${at}`, club)));
  showCard(9);
  onChoice("card-count", (count) => showCard(Number(count)));
  onClick("form-player", () => page.store.change((open) => {
    open.texts.player = playerText();
    open.names.player = "golfer.yaml";
  }, "player"));
  onClick("form-course", () => page.store.change((open) => {
    open.texts.course = courseText();
    open.names.course = "course.yaml";
    forgetCourse(open.settings);
  }, "course"));
}
