import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWheelSetting } from '../../src/quantity/read-wheel-setting.ts';

// One degree has sixty minutes (ISO 80000-3, from memory); one inch is 25.4 mm exactly.

describe('a wheel setting', () => {
  test.each([
    [`-0°30'`, -0.5, '°'],
    [`−1° 15′`, -1.25, '°'],
    [`+0°06'`, 0.1, '°'],
    [`30'`, 0.5, '°'],
    [`90'`, 1.5, '°'],
    [`0°59.4'`, 0.99, '°'],
    ['-0.5°', -0.5, '°'],
    ['1.25 deg', 1.25, '°'],
    ['0°', 0, '°'],
    [`-0°00'`, 0, '°'],
    ['2 mm', 2, 'mm'],
    ['-0.1 in', -2.54, 'mm'],
    ['0.3 cm', 3, 'mm'],
    ['20°', 20, '°'],
    ['-60 mm', -60, 'mm'],
  ])('%s', (text, value, unit) => {
    const reading = readWheelSetting(text);
    expect(reading).toMatchObject({ ok: true, unit });
    expect(reading.ok && reading.value).toBeCloseTo(value, 12);
  });

  test.each([
    ['0.5', 'has no unit'],
    [`0°75'`, '60 minutes or more'],
    [`12"`, 'seconds or inches'],
    [`0°30'15"`, 'seconds or inches'],
    [`0.5°30'`, 'no angle that can be read for certain'],
    ['0,5°', 'decimal comma'],
    ['±0.5°', 'tolerance in it'],
    ['30°', 'out of all proportion'],
    [`1201'`, 'no angle'],
    ['61 mm', 'out of all proportion'],
    ['2 kg', 'is a mass'],
    ['45 min', 'is a time'],
    ['', 'Nothing is written here'],
    ['NaN°', 'does not begin with a number'],
    ['1e308°', 'power of ten'],
    ['see print-out', 'does not begin with a number'],
  ])('%s is refused with a sentence', (text, part) => {
    const reading = readWheelSetting(text);
    expect(reading.ok ? 'read' : reading.reason).toContain(part);
  });

  test('degrees and minutes are read back, whatever their sign', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 19 }),
        fc.integer({ min: 0, max: 59 }),
        fc.constantFrom('', '-', '−'),
        (degrees, minutes, sign) => {
          const reading = readWheelSetting(`${sign}${String(degrees)}°${String(minutes).padStart(2, '0')}'`);
          const size = (degrees * 60 + minutes) / 60;
          return reading.ok && Math.abs(reading.value - (sign === '' ? size : -size)) < 1e-12;
        },
      ),
    );
  });

  test('nothing that is written throws', () => {
    fc.assert(fc.property(fc.string(), (text) => typeof readWheelSetting(text).ok === 'boolean'));
  });
});
