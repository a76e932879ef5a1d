// The invented courses, members and logs that the page has inside.

import bareScorecard from "../../courses/bare-scorecard/course.yaml";
import woman12After from "../../courses/heron-ferry/bay/12-woman-after.csv";
import woman12Before from "../../courses/heron-ferry/bay/12-woman-before.csv";
import weekend16After from "../../courses/heron-ferry/bay/weekend-16-after.csv";
import weekend16Before from "../../courses/heron-ferry/bay/weekend-16-before.csv";
import heronFerry from "../../courses/heron-ferry/course.yaml";
import woman12 from "../../courses/heron-ferry/members/12-woman.yaml";
import man24 from "../../courses/heron-ferry/members/24-man.yaml";
import woman28 from "../../courses/heron-ferry/members/28-woman.yaml";
import man8 from "../../courses/heron-ferry/members/8-man.yaml";
import junior from "../../courses/heron-ferry/members/junior.yaml";
import scratch from "../../courses/heron-ferry/members/scratch-man.yaml";
import senior20 from "../../courses/heron-ferry/members/senior-20-man.yaml";
import weekend16 from "../../courses/heron-ferry/members/weekend-16-man.yaml";
import clubMembers from "../../courses/heron-ferry/members.csv";
import options from "../../courses/heron-ferry/options.yaml";
import marshEnd from "../../courses/marsh-end/course.yaml";
import { type Case, usualCase } from "./case";

// By the names of their files.
export const courses: Record<string, string> = {
  "heron-ferry.yaml": heronFerry, "marsh-end.yaml": marshEnd, "bare-scorecard.yaml": bareScorecard,
};

export const players: Record<string, string> = {
  "weekend-16-man.yaml": weekend16, "scratch-man.yaml": scratch, "8-man.yaml": man8, "12-woman.yaml": woman12,
  "senior-20-man.yaml": senior20, "24-man.yaml": man24, "28-woman.yaml": woman28, "junior.yaml": junior,
};

export interface Logs {
  before: string;
  after: string;
}

export const logs: Record<string, Logs> = {
  "weekend-16": { before: weekend16Before, after: weekend16After },
  "12-woman": { before: woman12Before, after: woman12After },
};

export const members = clubMembers;

export function firstCase(): Case {
  return usualCase(
    { course: heronFerry, player: weekend16, options_file: options },
    { course: "heron-ferry.yaml", player: "weekend-16-man.yaml", options_file: "options.yaml" },
  );
}

// What a choice is called: its name in the file.
export function titleOf(text: string): string {
  return /^(?:name|label): *(.*)$/m.exec(text)?.[1]?.trim() ?? "";
}
