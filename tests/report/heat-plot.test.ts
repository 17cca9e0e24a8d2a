import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { markSign, scaleOf } from '../../src/report/heat/heat-picture.ts';
import type { HeatPicture } from '../../src/report/heat/heat-picture.ts';
import { heatPlot } from '../../src/report/heat/heat-plot.ts';

const picture: HeatPicture = {
  title: 'Rail',
  curves: [
    {
      label: '1.2 mm sheet',
      curve: { distancesMm: [0, 50, 100], peakCelsius: [600, 300, 0], endOfHoldCelsius: [600, 200, 0] },
    },
  ],
  limits: [{ celsius: 300, label: 'limit of steel' }],
  marks: [{ distanceMm: 50, peakCelsius: 300, label: 'Pillar' }],
  clearMm: 50,
};

describe('the picture of a heat in the terminal', () => {
  test('no line is wider than asked, and the plot itself is plain ASCII', () => {
    for (const columns of [60, 80, 100]) {
      const lines = heatPlot(picture, columns);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
      for (const line of lines.filter((one) => one.includes('|'))) expect(line).toMatch(/^[\x20-\x7e]*$/u);
    }
  });

  test('curve, limit and stay-clear line cross where the neighbour stands: half way along, half way up', () => {
    const rows = heatPlot(picture, 80).filter((line) => line.includes('|'));
    const [line = ''] = rows.filter((row) => row.slice(11).includes('1'));
    expect(rows.indexOf(line)).toBe((rows.length - 1) / 2);
    const inside = line.slice(11);
    expect(inside.indexOf('1')).toBeCloseTo((80 - 12) / 2, -1);
    expect(inside).toContain('-');
    expect(rows[1]).toMatch(/:/u);
  });

  test('what each sign means is written below', () => {
    const words = heatPlot(picture, 80).join(' ').replaceAll(/\s+/gu, ' ');
    for (const told of [
      '* highest',
      '. at the end',
      '- 300 °C, limit of steel',
      ': stay-clear distance, 50 mm',
      '1: Pillar',
    ])
      expect(words).toContain(told);
  });

  test('without a curve there is no picture', () => {
    expect(heatPlot({ ...picture, curves: [] }, 80)).toEqual([]);
  });

  test('more neighbours than signs', () => {
    expect([markSign(0), markSign(8), markSign(9), markSign(99)]).toEqual(['1', '9', 'a', '+']);
  });
});

describe('the scale', () => {
  test('begins at 0, ends no more than one step past what is drawn, in steps of 1, 2 or 5', () => {
    const sizes = fc.integer({ min: 1, max: 2000 });
    fc.assert(
      fc.property(sizes, sizes, (celsius, mm) => {
        const curve = { distancesMm: [0, mm], peakCelsius: [celsius, 0], endOfHoldCelsius: [0, 0] };
        const scale = scaleOf({ title: '', curves: [{ label: '', curve }], limits: [], marks: [] }, 8);
        expect(scale.mostCelsius).toBeGreaterThanOrEqual(celsius);
        expect(scale.mostCelsius - celsius).toBeLessThan(scale.stepCelsius);
        expect(scale.mostMm).toBeGreaterThanOrEqual(mm);
        expect(String(scale.stepMm).replaceAll(/[0.]/gu, '')).toMatch(/^[125]$/u);
      }),
    );
  });
});
