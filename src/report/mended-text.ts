import { visibleText } from './visible-text.ts';

/** What would be changed in a file: each line that differs, as it is and as it would be. No line comes or goes. */
export function mendedText(
  { file, keys }: { readonly file: string; readonly keys: number },
  before: string,
  after: string,
  columns: number,
): string {
  const old = before.split(/\r?\n/u);
  const changed = after.split(/\r?\n/u);
  const lines = [`${visibleText(file)}: ${String(keys)} ${keys === 1 ? 'key' : 'keys'} to mend`];
  old.forEach((line, index) => {
    const now = changed[index] ?? '';
    if (line === now) return;
    const place = `  line ${String(index + 1)}`;
    const from = firstDifference(line, now);
    lines.push(`${place}  is    ${part(line, from, columns - place.length - 8)}`);
    lines.push(`${' '.repeat(place.length)}  mend  ${part(now, from, columns - place.length - 8)}`);
  });
  return `${lines.join('\n')}\n`;
}

/** As much of a line as fits, with the place that differs in it. */
function part(line: string, from: number, room: number): string {
  const units = Array.from(visibleText(line));
  if (units.length <= room) return units.join('');
  const start = Math.max(0, Math.min(from - 12, units.length - room + 1));
  const head = start === 0 ? '' : '…';
  const cut = units.slice(start, start + room - head.length - 1);
  return `${head}${cut.join('')}${start + cut.length < units.length ? '…' : ''}`;
}

function firstDifference(one: string, other: string): number {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  return at;
}
