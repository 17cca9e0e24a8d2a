import { describe, expect, test } from 'vitest';
import { describeTimes, timePanel } from '../../src/report/heat/heat-time-svg.ts';
import type { HeatPicture } from '../../src/report/heat/heat-picture.ts';

const picture = (times: HeatPicture['times']): HeatPicture => ({
  title: 'A heat',
  curves: [],
  limits: [{ celsius: 200, label: 'limit of a pillar' }],
  marks: [],
  ...(times === undefined ? {} : { times }),
});
/** By hand: 20 °C, up to 220 °C in 100 s, back to 20 °C at 500 s in a straight line. */
const triangle = {
  label: 'Pillar & sill, 40 mm',
  history: { seconds: [0, 100, 500], celsius: [20, 220, 20] },
};

describe('the picture against time', () => {
  test('has one curve for each place, a limit line, axes with units and an escaped legend', () => {
    const panel = timePanel(picture([triangle, { ...triangle, label: 'Floor' }]));
    const drawn = panel?.drawn ?? '';
    expect(drawn.match(/<polyline /gu)).toHaveLength(2);
    for (const words of ['Time from the start, s', 'Temperature, °C', '200 °C limit of a pillar', 'Floor'])
      expect(drawn).toContain(words);
    expect(drawn).toContain('Pillar &amp; sill, 40 mm');
  });

  test('the peak stands where it is: 100 of 500 s along, 220 of 250 °C up', () => {
    const points = /points="([^"]*)"/u.exec(timePanel(picture([triangle]))?.drawn ?? '')?.[1] ?? '';
    // The plot is 580 wide from 70 and 300 high down to 332.
    expect(points.split(' ')).toContain('186,68');
  });

  test('what takes long counts in minutes', () => {
    const slow = { label: 'Sill', history: { seconds: [0, 3600, 7200], celsius: [20, 90, 20] } };
    expect(timePanel(picture([slow]))?.drawn).toContain('Time from the start, min');
  });

  test('is told in words; without a history there is neither', () => {
    expect(describeTimes(picture([triangle]))).toBe(
      'Over time, Pillar & sill, 40 mm: hottest after 100 s with 220 °C.',
    );
    expect(timePanel(picture(undefined))).toBeUndefined();
    expect(describeTimes(picture([]))).toBe('');
  });
});
