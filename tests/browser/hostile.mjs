// Names as no file should have them, in files that are valid all the same.
import { readFileSync } from 'node:fs';

export const hostileName =
  '<script>document.title="run"</script> <img src=x onerror=alert(1)> "double" \'single\' & ]]> --> שלום עולם 😀👩‍🚀 ' +
  'W'.repeat(120) + ' and on '.repeat(22);

// In double quotes as YAML has them.
const quoted = (text) => JSON.stringify(text);

export function hostileCourse() {
  const course = readFileSync('courses/heron-ferry/course.yaml', 'utf8');
  return course.replace(/^name: .*$/m, `name: ${quoted(hostileName)}`)
    .replaceAll(/\bmiddle\b/g, quoted('</script><b>middle'));
}

export function hostilePlayer() {
  const player = readFileSync('courses/heron-ferry/members/weekend-16-man.yaml', 'utf8');
  return player.replace(/^label: .*$/m, `label: ${quoted(hostileName)}`)
    .replaceAll(/club: 5-wood/g, `club: ${quoted('5-wood <i>"& ' + 'w'.repeat(60))}`);
}
