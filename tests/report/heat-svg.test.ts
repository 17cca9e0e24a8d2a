import { describe, expect, test } from 'vitest';
import type { HeatPicture } from '../../src/report/heat/heat-picture.ts';
import { heatSvg } from '../../src/report/heat/heat-svg.ts';

const curve = {
  distancesMm: [0, 10, 20, 30, 40],
  peakCelsius: [600, 400, 280, 200, 150],
  endOfHoldCelsius: [600, 390, 260, 170, 110],
};

const picture: HeatPicture = {
  title: 'Rail, heating',
  curves: [{ label: '1.2 mm sheet', curve }],
  limits: [{ celsius: 200, label: 'limit of steel' }],
  marks: [
    { distanceMm: 10, peakCelsius: 400, label: 'Pillar: 10 mm' },
    { distanceMm: 10, peakCelsius: 400, label: 'Glue: 10 mm' },
    { distanceMm: 900, peakCelsius: 20, label: 'Airbag: 900 mm' },
    { distanceMm: 40, label: 'Loom: not known' },
  ],
  clearMm: 30,
};

/** Numbers of an attribute of every element of a name. */
function numbers(svg: string, element: string, attribute: string): readonly number[] {
  return [...svg.matchAll(new RegExp(`<${element} [^>]*\\b${attribute}="([-\\d.]+)"`, 'gu'))].map(([, one]) =>
    Number(one),
  );
}

describe('the picture of a heat as SVG', () => {
  const svg = heatSvg('Heats', [picture]);

  test('says what it shows to who cannot see it', () => {
    expect(svg).toMatch(/<svg [^>]*role="img" aria-labelledby="title desc"/u);
    expect(svg).toContain('<title id="title">Heats</title>');
    const [, described = ''] = /<desc id="desc">([^<]*)<\/desc>/u.exec(svg) ?? [];
    for (const told of [
      '600 °C',
      '150 °C at 40 mm',
      'Limit 200 °C',
      'Pillar: 10 mm',
      'Loom: not known',
      '30 mm',
    ])
      expect(described).toContain(told);
  });

  test('axes carry their units, the limit its label, the stay-clear distance its number', () => {
    expect(svg).toContain('>Temperature, °C</text>');
    expect(svg).toContain('>Distance from the edge of the heated zone, mm</text>');
    expect(svg).toContain('>200 °C limit of steel</text>');
    expect(svg).toContain('>stay 30 mm clear</text>');
  });

  test('a heat sink is a bar on the axis, in the list and in the words', () => {
    const withSink = heatSvg('Heats', [
      { ...picture, sinks: [{ fromMm: 20, toMm: 30, label: 'wet cloth from 20 mm to 30 mm' }] },
    ]);
    expect(withSink).toContain('Counted heat sink: wet cloth from 20 mm to 30 mm.');
    expect(withSink).toContain('>heat sink on the sheet: wet cloth from 20 mm to 30 mm</text>');
    expect(svg).not.toContain('heat sink');
  });

  test('needs nothing from outside and runs nothing', () => {
    expect(svg).not.toMatch(/<(?:script|style|image|foreignObject|use|a)\b|href|url\(|\bon\w+=|@import/iu);
    expect(svg.match(/https?:[^"]*/gu)).toEqual(['http://www.w3.org/2000/svg']);
  });

  test('curves differ in their dashes, not in colour alone', () => {
    const two = heatSvg('Heats', [
      { ...picture, curves: [...picture.curves, { label: '2.4 mm sheet', curve }] },
    ]);
    const peaks = [...two.matchAll(/<polyline [^>]*stroke-width="2\.5"([^>]*)\/>/gu)].map(
      ([, style]) => style,
    );
    expect(new Set(peaks).size).toBe(2);
    expect(svg).toMatch(/<polyline [^>]*stroke-dasharray/u);
  });

  test('the curve lies where the axes say: 200 °C and the limit line cross at 30 mm, where the stay-clear line is', () => {
    const [, points = ''] = /<polyline points="([^"]*)"[^>]*stroke-width="2\.5"/u.exec(svg) ?? [];
    const [x = Number.NaN, y = Number.NaN] = (points.split(' ')[3] ?? '').split(',').map(Number);
    const [, limitY] = /<line x1="[\d.]+" y1="([\d.]+)"[^>]*stroke-dasharray="10 4 2 4"/u.exec(svg) ?? [];
    const [, clearX] = /<line x1="([\d.]+)"[^>]*stroke-dasharray="6 6"/u.exec(svg) ?? [];
    expect(Number(limitY)).toBeCloseTo(y, 1);
    expect(Number(clearX)).toBeCloseTo(x, 1);
  });

  test('marks at one place stand apart; what lies beyond the picture is only listed', () => {
    const [first = 0, second = 0, third] = numbers(svg, 'circle', 'cy');
    expect(numbers(svg, 'circle', 'cx')).toHaveLength(3);
    expect(Math.abs(first - second)).toBeGreaterThan(20);
    expect(third).toBeGreaterThan(first);
    expect(svg).toContain('3: Airbag: 900 mm');
  });

  test('nothing is drawn outside of the picture', () => {
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/u.exec(svg) ?? [];
    for (const x of [...numbers(svg, 'line', 'x2'), ...numbers(svg, 'text', 'x')])
      expect(x).toBeLessThanOrEqual(Number(width));
    expect(Math.max(...numbers(svg, 'text', 'y'))).toBeLessThan(Number(height) - 60);
  });

  test('what the author of a plan writes stays text', () => {
    const evil = '</text><script>alert("1")</script> & \u202e \u0000 \ufffe';
    const written = heatSvg(evil, [
      {
        ...picture,
        title: evil,
        limits: [{ celsius: 1, label: evil }],
        marks: [{ distanceMm: 1, label: evil }],
      },
    ]);
    expect(written).not.toContain('<script');
    expect(written).toContain('&lt;script&gt;');
    expect(written).toContain('&amp;');
    // eslint-disable-next-line no-control-regex -- what XML cannot hold
    expect(written).not.toMatch(/[\u0000-\u0008\u202e\ufffe]/u);
  });

  test('a long name is broken over lines', () => {
    const long = heatSvg('Heats', [
      { ...picture, title: 'word '.repeat(60), marks: [{ distanceMm: 1, label: 'x'.repeat(200) }] },
    ]);
    const texts = [...long.matchAll(/<text [^>]*>([^<]*)<\/text>/gu)].map(([, one = '']) => one.length);
    expect(Math.max(...texts)).toBeLessThanOrEqual(100);
  });
});
