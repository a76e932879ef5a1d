// A file in the page: its text to be edited, faults beside their lines.

import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { type Diagnostic, lintGutter, setDiagnostics } from "@codemirror/lint";
import { Annotation } from "@codemirror/state";
import { drawSelection, EditorView, keymap, lineNumbers } from "@codemirror/view";
import type { Finding } from "./engines";

export interface Editor {
  set(text: string): void;
  showFindings(findings: Finding[]): void;
  goTo(finding: Finding): void;
  line(): number; // of the cursor, from 1
}

// A text that was put in, and not typed.
const putIn = Annotation.define<boolean>();

const look = EditorView.theme({
  "&": { color: "var(--ink)", backgroundColor: "var(--field)", maxHeight: "22rem", fontSize: ".8rem" },
  ".cm-scroller": { fontFamily: "monospace" },
  ".cm-content": { caretColor: "var(--ink)" },
  ".cm-cursor": { borderLeftColor: "var(--ink)" },
  ".cm-gutters": { color: "var(--faint)", backgroundColor: "var(--paper)", borderRight: "1px solid var(--rule)" },
  "&.cm-focused": { outline: "3px solid var(--focus)" },
  "&.cm-focused .cm-selectionBackground, .cm-selectionBackground": { backgroundColor: "var(--chosen) !important" },
  ".cm-tooltip": { color: "var(--ink)", backgroundColor: "var(--field)", border: "1px solid var(--rule)" },
});

// typed: what the text is after the user has typed. moved: the cursor is in another line.
export function editorIn(host: HTMLElement, name: string, typed: (text: string) => void, moved?: () => void): Editor {
  // A tree of its own takes its style without an element for it, which the page's policy would refuse.
  const root = host.attachShadow({ mode: "open" });
  const view = new EditorView({
    root,
    parent: root,
    extensions: [
      lineNumbers(), history(), drawSelection(), lintGutter(), EditorView.lineWrapping, look,
      keymap.of([...defaultKeymap, ...historyKeymap]),
      EditorView.contentAttributes.of({ "aria-label": name, tabindex: "0" }),
      EditorView.updateListener.of((update) => {
        const byUser = update.docChanged && !update.transactions.some((one) => one.annotation(putIn));
        if (byUser) typed(update.state.doc.toString());
        if (update.selectionSet || update.docChanged) moved?.();
      }),
    ],
  });

  function place(finding: Finding): number {
    const line = view.state.doc.line(Math.min(Math.max(finding.line, 1), view.state.doc.lines));
    return Math.min(line.from + Math.max(finding.column - 1, 0), line.to);
  }

  return {
    set(text) {
      if (view.state.doc.toString() === text) return;
      const changes = { from: 0, to: view.state.doc.length, insert: text };
      view.dispatch({ changes, annotations: putIn.of(true) });
    },
    showFindings(findings) {
      const found = findings.filter((finding) => finding.line > 0).map((finding): Diagnostic => {
        const from = place(finding);
        const severity = finding.severity === "fault" ? "error" : "warning";
        return { from, to: view.state.doc.lineAt(from).to, severity, message: finding.message };
      });
      view.dispatch(setDiagnostics(view.state, found));
    },
    goTo(finding) {
      view.dispatch({ selection: { anchor: place(finding) }, scrollIntoView: true });
      view.focus();
    },
    line: () => view.state.doc.lineAt(view.state.selection.main.head).number,
  };
}
