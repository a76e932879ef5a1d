// The page's start.

import { compileEngine, startWorker } from "./start_engine";
import type { Told } from "./worker";

const answer = document.getElementById("answer") as HTMLElement;

compileEngine().then((engine) => {
  const worker = startWorker(engine);
  worker.onmessage = (event: MessageEvent<Told>): void => {
    const told = event.data;
    if ("failure" in told) answer.textContent = told.failure;
    if ("reply" in told) answer.textContent = String(JSON.parse(told.reply).text);
  };
  worker.postMessage({ id: 1, request: JSON.stringify({ command: "gain" }) });
});
