import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetHtml } from '../../src/report/sheet/sheet-html.ts';
import { measuredRing } from '../measured-ring.ts';
import { axeOn, browser, rendered } from '../report/browser.ts';
import { hostileTexts } from '../report/hostile-texts.ts';
import { conformance, readPage } from '../report/read-page.ts';
import { hostileSheet } from '../report/sheet/hostile-sheet.ts';
import { sheetOf } from '../sheet-text.ts';
import { runPlanish } from './run-planish.ts';

const example = (name: string): string => readFileSync(`examples/plans/${name}.yaml`, 'utf8');

/** The class page of `planish mark`. */
function classPage(): string {
  const { stdout } = runPlanish([
    'mark',
    '--key',
    'examples/class/key.yaml',
    '--format',
    'html',
    'examples/class/plans',
  ]);
  return stdout;
}

test('the class page conforms', async () => {
  const page = classPage();
  expect(readPage(page).errors).toEqual([]);
  expect(await conformance(page)).toEqual([]);
});

describe.skipIf(browser === undefined)('in Debian’s chromium (skipped where it is not installed)', () => {
  const pages: readonly (readonly [string, () => string])[] = [
    ['sheet of a stopped plan', () => sheetHtml(sheetOf(example('ring-sectioned-by-old-document')))],
    ['sheet with heat', () => sheetHtml(sheetOf(example('rail-heated-near-pillar')))],
    ['sheet with measured points', () => sheetHtml(sheetOf(measuredRing))],
    ['sheet with many holds', () => sheetHtml(sheetOf(example('student-plan')))],
    ['class page', classPage],
  ];

  test.each(pages)('axe-core finds nothing in the %s', (_name, page) => {
    const { violations, unsure, passed } = axeOn(page());
    expect(violations).toEqual([]);
    // Of text in a drawing axe cannot tell the ground; the test of its colours does.
    expect(unsure.filter((one) => !/^color-contrast: <text /u.test(one))).toEqual([]);
    expect(passed).toBeGreaterThan(20);
  });

  test('and it does find what is wrong', () => {
    const page = sheetHtml(sheetOf(example('door-skin-cosmetic'))).replace('<html lang="en">', '<html>');
    expect(axeOn(page).violations.join()).toContain('html-has-lang');
  });

  test('nothing that is written in a plan runs, even without the policy of the page', () => {
    const scripts = [
      '<script>document.title="ran"</script>',
      '"><img src=x onerror="document.title=\'ran\'">',
    ];
    const texts = [
      ...scripts,
      '<svg/onload=document.title="ran">',
      '</style><script>document.title="ran"</script>',
    ];
    const bodies = [...texts, ...hostileTexts].map((text) => {
      const page = sheetHtml(hostileSheet(text));
      return page.slice(page.indexOf('<body>') + 6, page.indexOf('</body>'));
    });
    const page = `<!DOCTYPE html><html lang="en"><head><title>still</title></head><body>${bodies.join('\n')}</body></html>`;
    const shown = rendered(page);
    expect(shown).toContain('<title>still</title>');
    // The same scripts do run where they are not escaped.
    expect(rendered(`<title>still</title>${scripts[0] ?? ''}`)).toContain('<title>ran</title>');
  });

  test.each([
    ['sheet', () => sheetHtml(sheetOf(example('door-skin-cosmetic')))],
    ['class page', classPage],
  ])('the policy of the %s lets its style count, and no script', (_name, made) => {
    const page = made();
    const script = '<script>document.title="ran"</script></body>';
    expect(rendered(page.replace('</body>', script))).not.toContain('<title>ran</title>');
    const measuring = `<script>document.title=getComputedStyle(document.querySelector('td')).borderBottomStyle</script></body>`;
    const open = page.replace("default-src 'none'", "default-src 'none'; script-src 'unsafe-inline'");
    expect(rendered(open.replace('</body>', measuring))).toContain('<title>solid</title>');
  });
});

/** Relative luminance and contrast by WCAG 2.1, 1.4.3 and its definitions. */
function contrastOnWhite(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05);
}

test('all text of sheet and drawings has a contrast of 4.5 to 1 on white', () => {
  // Black and the least grey that passes, as the understanding document of 1.4.3 has them.
  expect(contrastOnWhite('#000000')).toBeCloseTo(21, 5);
  expect(contrastOnWhite('#767676')).toBeCloseTo(4.54, 2);
  const page = sheetHtml(sheetOf(measuredRing)) + sheetHtml(sheetOf(example('rail-heated-near-pillar')));
  const inks = [...page.matchAll(/(?<![-\w])color:(#[0-9a-f]{3,6})|<text [^>]*fill="(#[0-9a-f]{6})"/gu)].map(
    ([, style, fill]) => style ?? fill ?? '',
  );
  expect(inks.length).toBeGreaterThan(5);
  for (const ink of inks) {
    const full = ink.length === 4 ? `#${[...ink.slice(1)].map((digit) => digit + digit).join('')}` : ink;
    expect(contrastOnWhite(full)).toBeGreaterThanOrEqual(4.5);
  }
});
