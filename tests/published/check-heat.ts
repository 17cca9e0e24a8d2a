// Prints what the heat room computes beside what others have, row by row. Exit status 1 when a row is out.
// Run: npm run check:heat
import { allRows } from './heat-checks/all-rows.ts';
import { judged } from './heat-checks/check-row.ts';

const rows = allRows().map(judged);
const out = rows.filter(({ ok }) => !ok);
const heads = ['what', 'source', 'expected', 'computed', 'error', 'allowed', ''];
const number = (value: number): string => Number(value.toPrecision(5)).toString();
const signed = (value: number): string => (value > 0 ? `+${number(value)}` : number(value));
const table = [
  heads,
  ...rows.map(({ what, source, unit, expected, computed, error, least, most, ok }) => [
    what,
    source,
    `${number(expected)} ${unit}`,
    number(computed),
    signed(Number(error.toPrecision(3))),
    `${signed(Number(least.toPrecision(3)))} to ${signed(Number(most.toPrecision(3)))}`,
    ok ? 'ok' : 'OUT',
  ]),
];
const widths = heads.map((_, n) => Math.max(...table.map((cells) => cells[n]?.length ?? 0)));
for (const cells of table) {
  process.stdout.write(
    `${cells
      .map((text, n) => text.padEnd(widths[n] ?? 0))
      .join('  ')
      .trimEnd()}\n`,
  );
}
process.stdout.write(`${rows.length} rows, ${out.length} out\n`);
process.exitCode = out.length === 0 ? 0 : 1;
