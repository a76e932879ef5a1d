// One step at a time on a narrow screen; on a wide one all are there, and the list of steps leads to them.

import { element } from "./show";

const links = (): HTMLAnchorElement[] => [...document.querySelectorAll<HTMLAnchorElement>("nav a")];

function show(name: string, focus: boolean): void {
  for (const link of links()) {
    const current = link.hash === `#${name}`;
    if (current) link.setAttribute("aria-current", "step");
    else link.removeAttribute("aria-current");
    element(link.hash.slice(1)).classList.toggle("current", current);
  }
  if (focus) element(`${name}-title`).focus();
}

export function startSteps(): void {
  const named = (): string => links().find((link) => link.hash === location.hash)?.hash.slice(1) ?? "who";
  window.addEventListener("hashchange", () => show(named(), true));
  show(named(), false);
}
