import { describe, expect, it } from 'vitest';
import { readFrameNumber } from '../../src/vehicle/frame-number.ts';

describe('readFrameNumber', () => {
  it.each([
    ['TRN10-0012345', 'TRN10-0012345', false],
    ['trn10-0012345', 'TRN10-0012345', true],
    [' TRN10 - 0012345 ', 'TRN10-0012345', true],
    ['TR1-001234', 'TR1-001234', false],
  ])('reads "%s"', (text, frame, tidied) => {
    expect(readFrameNumber(text)).toEqual({ ok: true, frame, tidied });
  });

  it.each([
    ['TR1-00123', /has 8 letters and digits; a frame number has 9 to 12/u],
    ['TRN100-0012345', /has 13 letters and digits/u],
    ['TRN100012345', /has 0 hyphens/u],
    ['TRN-10-0012345', /has 2 hyphens/u],
    ['TRN10-00123A5', /the serial is all digits/u],
    ['12345-0012345', /the type has a letter in it/u],
    ['-0012345678', /the type has a letter in it/u],
    ['TRN10-', /the serial is all digits/u],
    ['TRN10*0012345', /a character that a frame number does not use/u],
    ['0DMAC3D44R1000125', /17 characters and no hyphen/u],
    ['', /No frame number is written/u],
  ])('refuses "%s"', (text, reason) => {
    const reading = readFrameNumber(text);
    expect(reading.ok ? '' : reading.reason).toMatch(reason);
  });
});
