import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetHtml } from '../../../src/report/sheet/sheet-html.ts';
import { measuredRing } from '../../measured-ring.ts';
import { sheetOf } from '../../sheet-text.ts';
import { conformance, readPage } from '../read-page.ts';
import type { ReadElement } from '../read-page.ts';

const example = (name: string): string => readFileSync(`examples/plans/${name}.yaml`, 'utf8');

const plans: readonly (readonly [string, string])[] = [
  ['measured', measuredRing],
  ...['door-skin-cosmetic', 'electric-sill', 'rail-heated-near-pillar', 'ring-end-piece-by-drawn-cut']
    .concat(['ring-replaced-whole', 'ring-sectioned-by-old-document', 'student-plan'])
    .map((name) => [name, example(name)] as const),
  ['nothing but the least', 'format: 1\nvehicle: {}\nparts: []\n'],
];

const of = (elements: readonly ReadElement[], name: string, className?: string): readonly ReadElement[] =>
  elements.filter(
    (one) =>
      one.name === name &&
      (className === undefined || (one.attributes['class'] ?? '').split(' ').includes(className)),
  );

describe.each(plans)('the sheet of %s', (_name, text) => {
  const report = sheetOf(text);
  const page = sheetHtml(report);
  const { errors, elements } = readPage(page);

  test('conforms, by a parser and a checker that are not ours', async () => {
    expect(errors).toEqual([]);
    expect(await conformance(page)).toEqual([]);
  });

  test('does nothing and fetches nothing: its policy says so and it holds to it', () => {
    const names = new Set(elements.map(({ name }) => name));
    for (const name of [
      'script',
      'link',
      'img',
      'iframe',
      'object',
      'form',
      'base',
      'image',
      'use',
      'a:href',
    ])
      expect(names).not.toContain(name);
    for (const { attributes } of elements) {
      expect(Object.keys(attributes).filter((key) => /^on|^src|^style$|^xlink/u.test(key))).toEqual([]);
      if (attributes['href'] !== undefined) expect(attributes['href']).toMatch(/^#/u);
    }
    const [style = ''] = /(?<=<style>)[^<]*(?=<\/style>)/u.exec(page) ?? [];
    const digest = createHash('sha256').update(style).digest('base64');
    const policy = elements.find(({ attributes }) => attributes['http-equiv'] === 'Content-Security-Policy');
    expect(policy?.attributes['content']).toBe(
      `default-src 'none'; style-src 'sha256-${digest}'; base-uri 'none'; form-action 'none'`,
    );
  });

  test('every id is there once, and every link leads to one', () => {
    const ids = elements.flatMap(({ attributes }) => attributes['id'] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { attributes } of of(elements, 'a'))
      expect(ids).toContain((attributes['href'] ?? '').slice(1));
  });

  test('the first screen has the question and the answer', () => {
    const [first] = of(elements, 'header');
    const asked = {
      draft: 'How does the draft stand?',
      start: 'May work begin?',
      release: 'May the vehicle go?',
    };
    expect(first?.text).toContain(asked[report.report.stage ?? 'release']);
    expect(first?.text).toContain(report.report.verdict.toUpperCase());
    for (const { finding } of report.report.findings
      .filter((one) => one.finding.severity === 'stop')
      .slice(0, 8))
      expect(first?.text).toContain(finding.message);
  });

  test('every finding stands there once, with what to do instead, why, its rule and its line', () => {
    const items = ['stop', 'hold', 'note'].flatMap((name) => of(elements, 'li', name));
    expect(items).toHaveLength(report.report.findings.length);
    for (const { finding, place } of report.report.findings) {
      const item = items.filter(
        (one) =>
          one.text.includes(finding.message) &&
          one.text.includes(`Rule ${finding.rule} of pack ${finding.pack}`) &&
          /[.,] /.test(
            one.text.split(`Line ${String(place.line)}, column ${String(place.column)}`)[1]?.slice(0, 2) ??
              '',
          ),
      );
      expect(item.length).toBeGreaterThan(0);
      expect(item[0]?.text).toContain(finding.instead);
      expect(item[0]?.text).toContain(finding.why);
      for (const one of finding.assumptions) expect(item[0]?.text).toContain(one);
      expect(item[0]?.text.toLowerCase().startsWith(finding.severity)).toBe(true);
    }
  });

  test('tables have captions and heads, pictures have names, headings come in order', () => {
    expect(of(elements, 'caption')).toHaveLength(of(elements, 'table').length);
    for (const { attributes } of of(elements, 'th')) expect(attributes['scope']).toMatch(/^(?:row|col)$/u);
    for (const { attributes } of of(elements, 'svg'))
      expect(attributes['aria-hidden'] === 'true' || attributes['role'] === 'img').toBe(true);
    const levels = elements.flatMap(({ name }) => (/^h\d$/u.test(name) ? [Number(name.slice(1))] : []));
    expect(levels[0]).toBe(1);
    levels.forEach((level, index) => {
      expect(level).toBeLessThanOrEqual((levels[index - 1] ?? 0) + 1);
    });
  });
});

describe('what a person at the car looks for', () => {
  const page = readPage(sheetHtml(sheetOf(example('ring-sectioned-by-old-document')))).elements;
  const section = (title: string): string =>
    of(page, 'section', 'part').find(({ text }) => text.startsWith(`${title} (`))?.text ?? '';

  test('parts come from the outside in: the skin before the ring that it hides', () => {
    const names = of(page, 'h3').map(({ text }) => text);
    expect(names.indexOf('Side panel, left (side-panel-l)')).toBeLessThan(
      names.indexOf('Door ring, left (ring-l)'),
    );
    expect(section('Door ring, left')).toContain('Layer 2. Under Side panel, left.');
  });

  test('beside the part: what it is made of and from where, what is proposed, and its stops', () => {
    const ring = section('Door ring, left');
    expect(ring).toContain('press-hardened');
    expect(ring).toContain('22MnB5+AS150');
    expect(ring).toContain('Proposed: sectioning');
    expect(ring).toContain('(for other model years)');
    expect(ring).toContain('Stop 1');
  });

  test('documents say whether they cover the vehicle', () => {
    const row = of(page, 'tr').find(({ text }) => text.startsWith('BRM-TRN-1120'));
    expect(row?.text).toContain('No. The reference covers model years 2015 to 2019, not 2021.');
  });

  test('a stop is told beside the signature', () => {
    expect(of(page, 'section', 'sign-off')[0]?.text).toContain('No signature passes a stop.');
  });

  test('heat: a picture with its words, the neighbour in numbers', () => {
    const rail = readPage(sheetHtml(sheetOf(example('rail-heated-near-pillar')))).elements;
    const [figure] = of(rail, 'figure');
    expect(of(rail, 'desc')[0]?.text).toContain('Temperature in degrees Celsius against distance');
    expect(figure?.text).toContain('A-pillar, right');
    expect(figure?.text).toContain('over its stop limit');
  });

  test('measured points: drawn from above and from the side, and every one in the table', () => {
    const ring = readPage(sheetHtml(sheetOf(measuredRing))).elements;
    const drawing = of(ring, 'svg').find(({ text }) => text.includes('Measured after the repair'));
    expect(drawing?.text).toContain('From above');
    expect(drawing?.text).toContain('From the side');
    const rows = of(ring, 'tr').map(({ text }) => text);
    for (const name of ['Z1 (zero point)', 'Z4 (zero point)', 'A1', 'C1', 'C2R'])
      expect(rows.some((row) => row.startsWith(name))).toBe(true);
  });

  test('the steps around the work, in the words of the plan; one that is needed and not stated is there too', () => {
    const rows = of(page, 'tr').map(({ text }) => text);
    expect(rows).toContain(
      'batteries disconnected Battery off and covered, key kept in the office. not yet — — —',
    );
    const silent = example('ring-sectioned-by-old-document').replace('  scan_after: { planned: true }\n', '');
    const ofSilent = of(readPage(sheetHtml(sheetOf(silent))).elements, 'tr').map(({ text }) => text);
    expect(
      ofSilent.some((row) => /^scan after the repair not stated not yet .*welded electrically/u.test(row)),
    ).toBe(true);
  });

  test('what can go off beside the work, where it sits and what is done with it', () => {
    const rows = of(page, 'tr').map(({ text }) => text);
    expect(rows).toContain('Curtain airbag left Door ring, left undeployed removed 2');
  });

  test('a sound traction battery is told with the vehicle, and leaves no damage to be dealt with', () => {
    const sill = example('electric-sill');
    const rows = (text: string) =>
      of(readPage(sheetHtml(sheetOf(text))).elements, 'tr').map((row) => row.text);
    const named = (text: string) => rows(text).filter((row) => row.startsWith('battery damage dealt with'));
    expect(named(sill)).toEqual([]);
    expect(sheetHtml(sheetOf(sill))).toMatch(/Traction battery<\/dt>\s*<dd>sound/u);
    expect(named(sill.replace('battery_condition: sound', 'battery_condition: hit'))).toHaveLength(1);
    expect(named(sill.replace('battery_condition: sound', ''))).toHaveLength(1);
  });

  test('a part beside hot work on another one says so', () => {
    const rail = readPage(sheetHtml(sheetOf(example('rail-heated-near-pillar')))).elements;
    const pillar = of(rail, 'section', 'part').find(({ text }) => text.startsWith('A-pillar, right ('));
    expect(pillar?.text).toContain('Beside work on others heating on Front rail, right, 10 mm');
  });

  test('open holds stand in the sign-off block, one box each', () => {
    const report = sheetOf(example('student-plan'));
    const elements = readPage(sheetHtml(report)).elements;
    const block = of(elements, 'section', 'sign-off')[0]?.text ?? '';
    const holds = report.report.findings.filter(({ finding }) => finding.severity === 'hold');
    expect(holds.length).toBeGreaterThan(5);
    for (const { finding } of holds) expect(block).toContain(finding.message);
  });
});
