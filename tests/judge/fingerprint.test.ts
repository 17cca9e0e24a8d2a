import { describe, expect, test } from 'vitest';
import type { FactSheet } from '../../src/facts/sheet.ts';
import { judgeSheets } from '../../src/judge/judge-sheets.ts';
import { judgeText } from '../judge-text.ts';
import { changed, ring, ringCite } from '../one-change.ts';
import { box, compiled, known, rule, thing } from './invented-pack.ts';

const rules = compiled([
  rule({ id: 'sharp', judges: 'operation', when: [{ fact: 'thing.sharp', test: { anyOf: [true] } }] }),
]);

function prints(sheets: readonly FactSheet[]): readonly string[] {
  return judgeSheets(sheets, rules, 'draft').findings.map(({ fingerprint }) => fingerprint);
}

describe('of a plan', () => {
  const faulty = changed(ring, [[`        ${ringCite}\n`, '']]);
  const named = (text: string): readonly string[] =>
    judgeText(text)
      .findings.filter(({ finding }) => finding.severity === 'stop')
      .map(({ finding }) => finding.fingerprint);

  test.each<readonly [string, (text: string) => string]>([
    ['lines put before it', (text) => `# One.\n# Two.\n\n${text}`],
    ['line ends of another kind', (text) => text.replaceAll('\n', '\r\n')],
    ['the part told first', (text) => moveToFront(text, 'ring-l')],
    ['another name of the part', (text) => text.replace('name: Door ring, left', 'name: Ring')],
    ['another as-written figure', (text) => text.replace('thickness: 1.4 mm', 'thickness: 1.5 mm')],
  ])('survives %s', (_name, edit) => {
    const edited = edit(faulty);
    expect(edited).not.toBe(faulty);
    expect(named(edited)).toEqual(named(faulty));
    expect(named(faulty)).toHaveLength(1);
  });

  test('is 16 hexadecimal digits', () => {
    expect(named(faulty)[0]).toMatch(/^[0-9a-f]{16}$/u);
  });
});

describe('of operations', () => {
  const a = box('a', 0, {});
  const heat = (index: number, word: string): FactSheet =>
    thing(a, index, { 'thing.sharp': known(true), 'operation.do': known(word) });

  test('two of one word on one part are told apart by their order', () => {
    expect(new Set(prints([heat(0, 'heat'), heat(1, 'heat')])).size).toBe(2);
  });

  test('an operation of another word before it changes nothing', () => {
    const [alone] = prints([heat(0, 'heat')]);
    expect(prints([heat(0, 'weld'), heat(1, 'heat')])).toContain(alone);
  });
});

/** The same plan with one part written before the others. */
function moveToFront(text: string, id: string): string {
  const from = text.indexOf(`  - id: ${id}\n    name`);
  const to = text.indexOf('\n  - id: ', from) + 1;
  const block = text.slice(from, to);
  const rest = text.slice(0, from) + text.slice(to);
  return rest.replace('parts:\n', `parts:\n${block}`);
}
