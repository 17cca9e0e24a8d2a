import { expect, test } from 'vitest';
import { sheetHtml } from '../../../src/report/sheet/sheet-html.ts';
import { visibleText } from '../../../src/report/visible-text.ts';
import { placed } from '../invented-report.ts';
import { hostileTexts } from '../hostile-texts.ts';
import { conformance, readPage } from '../read-page.ts';
import { hostileSheet } from './hostile-sheet.ts';

/** More that is known to break out of HTML, of a style sheet, or of SVG in a page. */
const more = [
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</style><script>alert(1)</script>',
  '</title></svg><script>alert(1)</script>',
  '<!--',
  '-->',
  '<![CDATA[',
  '</p></li></ul></section></main>',
  '&lt;script&gt;alert(1)&lt;/script&gt;',
  '&#x202e;',
  'javascript:alert(1)',
  'expression(alert(1))}*{display:none}',
  'url(http://x.example/)',
  '${alert(1)}',
  '\u202e\u2067\u061c',
  '\ufdd0\ufffe\u{1ffff}',
  'w'.repeat(10_000),
  '<svg/onload=alert(1)>',
  '<a href="javascript:alert(1)">click</a>',
];

const shape = (page: string): readonly string[] =>
  readPage(page).elements.map(
    ({ name, attributes }) => `${name} ${Object.keys(attributes).sort().join(' ')}`,
  );

test.each([...hostileTexts, ...more].map((text) => [text.slice(0, 40), text] as const))(
  'whatever is written is text: %j',
  async (_name, text) => {
    const page = sheetHtml(hostileSheet(text));
    const { errors, elements } = readPage(page);
    expect(errors).toEqual([]);
    expect(await conformance(page)).toEqual([]);
    // Its elements and their attributes are those of a harmless plan; only pictures may break words into more lines.
    const plain = new Set(shape(sheetHtml(hostileSheet('plain'))));
    expect(shape(page).filter((one) => !plain.has(one))).toEqual([]);
    // And all of it is there to read.
    const shown = visibleText(text)
      .replaceAll(/[\p{Surrogate}\p{Noncharacter_Code_Point}]/gu, '?')
      .replaceAll(/\s+/gu, ' ')
      .trim();
    expect(elements.find(({ name }) => name === 'h3')?.text).toContain(shown || 'A part without a name');
    expect(elements.find(({ name }) => name === 'main')?.text.split(shown).length).toBeGreaterThan(60);
    for (const { attributes } of elements)
      if (attributes['href'] !== undefined) expect(attributes['href']).toMatch(/^#/u);
  },
);

/** Of every three findings one is a stop and two are holds. */
function sheetOfMany(count: number): string {
  const { report, ...rest } = hostileSheet('a < b');
  const findings = Array.from({ length: count }, (_one, index) =>
    placed(
      {
        ...{ rule: 'r', severity: index % 3 === 0 ? 'stop' : 'hold', part: 'a < b', pointer: '/parts/0' },
        message: `message ${String(index)}.`,
      },
      index + 1,
    ),
  );
  return sheetHtml({ ...rest, report: { ...report, findings, verdict: 'stopped' } });
}

test('five thousand findings: every one once, the first screen and the signature keep their size', () => {
  const { errors, elements } = readPage(sheetOfMany(5000));
  expect(errors).toEqual([]);
  const items = elements.filter(
    ({ name, attributes }) => name === 'li' && /^(?:stop|hold|note)-\d+$/u.test(attributes['id'] ?? ''),
  );
  expect(items).toHaveLength(5000);
  expect(new Set(items.map(({ attributes }) => attributes['id'])).size).toBe(5000);
  const header = elements.find(({ name }) => name === 'header')?.text ?? '';
  expect(header.length).toBeLessThan(2000);
  expect(header).toContain('And 4992 more, each beside what it concerns.');
  const signOff = elements.find(({ attributes }) => attributes['class'] === 'sign-off')?.text ?? '';
  // 3,333 holds, 40 of them listed.
  expect(signOff).toContain('And 3293 more holds, each beside what it concerns.');
});

// The checker takes a while for each element.
test('three hundred findings conform', async () => {
  expect(await conformance(sheetOfMany(300))).toEqual([]);
});
