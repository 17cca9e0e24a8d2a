import { describe, expect, it } from 'vitest';
import { readSignedLength } from '../../src/quantity/read-signed-length.ts';

describe('readSignedLength', () => {
  it.each([
    ['-350 mm', -350],
    ['−2.5 mm', -2.5],
    ['+2.5 mm', 2.5],
    ['-0.1 in', -2.54],
    ['0 mm', 0],
  ])('%s is %d mm', (text, expected) => {
    expect(readSignedLength(text)).toEqual({ ok: true, value: expected });
  });
  it.each([
    ['-2', /no unit/u],
    ['-2,5 mm', /write -2\.5 mm/u],
    ['-20000000 mm', /out of all proportion: a coordinate or deviation is read from -1000000 to 1000000 mm/u],
    ['-5 °C', /is a temperature, but a length is needed/u],
  ])('%s is refused', (text, reason) => {
    const reading = readSignedLength(text);
    expect(reading.ok ? '' : reading.reason).toMatch(reason);
  });
});
