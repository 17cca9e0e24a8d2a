import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sheetHtml } from '../../../src/report/sheet/sheet-html.ts';
import { visibleText } from '../../../src/report/visible-text.ts';
import { sheetOf } from '../../sheet-text.ts';
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

test('a whole plan of such texts, from its bytes to the page', async () => {
  // Control characters and the like a plan may not hold at all; tests/plan has them.
  const given = [...hostileTexts, ...more].filter(
    (text) =>
      text.length < 1000 &&
      !/[\p{Cf}\p{Surrogate}\p{Noncharacter_Code_Point}\u2028\u2029]|(?!\n)\p{Cc}/u.test(text),
  );
  const parts = given.map((text, index) => {
    const word = JSON.stringify(text);
    return `  - {id: ${JSON.stringify(`${String(index)}${text}`)}, name: ${word}, kind: ${word}, under: ${word}, grade: ${word}, grade_from: {reference: ${word}, at: ${word}}, damage: {kind: kink, found_by: ${word}, extent: ${word}}, note: ${word}, operations: [{do: section, at: ${word}, reason: ${word}, cite: {reference: ${word}, at: ${word}}, near: [{name: ${word}, distance: ${word}}], joints: [{to: ${word}, method: ${word}, settings: {program: ${word}}}]}]}`;
  });
  const word = JSON.stringify('"><script>alert(1)</script>');
  const page = sheetHtml(
    sheetOf(
      `format: 1\njob: {number: ${word}, written_by: {name: ${word}}}\nvehicle: {maker: ${word}, model: ${word}, vin: ${word}}\nreferences: [{id: ${word}, title: ${word}, document: ${word}}]\nsign_off: {by: {name: ${word}}, open_holds: ${word}}\ndeviations: [{rule: ${word}, reason: ${word}}]\nmeasurements: {points: [{name: ${word}, nominal: [0 mm, 0 mm, 0 mm], after: [1 mm, 0 mm, 0 mm]}]}\nparts:\n${parts.join('\n')}\n`,
    ),
  );
  const { errors, elements } = readPage(page);
  expect(errors).toEqual([]);
  expect(elements.filter(({ name }) => name === 'script' || name === 'img')).toEqual([]);
  expect(elements.filter(({ name }) => name === 'h3')).toHaveLength(given.length);
  expect(await conformance(page)).toEqual([]);
});

test('markup is made from nothing but what is drawn or written in the source', () => {
  const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  const makers = files.filter((name) => readFileSync(`src/${name}`, 'utf8').includes('new Markup('));
  expect(makers.map((name) => name.replaceAll('\\', '/')).toSorted()).toEqual([
    'report/html.ts',
    'report/sheet/sheet-finding.ts',
    'report/sheet/sheet-heat.ts',
    'report/sheet/sheet-html.ts',
    'report/sheet/sheet-measuring.ts',
  ]);
});
