export type FrameNumberReading =
  | { readonly ok: true; readonly frame: string; readonly tidied: boolean }
  | { readonly ok: false; readonly reason: string };

const longestShown = 40;

/**
 * Reads the frame number that stands for the seventeen characters on a car of the Japanese home market: the type in
 * letters and digits, one hyphen, the serial in digits; nine to twelve letters and digits together (secondary source;
 * whether the hyphen counts is not said there, so it is not counted). It holds no check digit and no year: only the
 * form can be looked at.
 */
export function readFrameNumber(text: string): FrameNumberReading {
  const frame = text
    .trim()
    .replace(/\s/gu, '')
    .replace(/[\u2010\u2011]/gu, '-')
    .replace(/[a-z]/gu, (letter) => letter.toUpperCase());
  const shown = frame.length > longestShown ? 'This' : `"${text.trim()}"`;
  if (frame === '')
    return { ok: false, reason: 'No frame number is written here: write type, hyphen and serial.' };
  const stray = /[^A-Z0-9-]/u.exec(frame);
  if (stray !== null) {
    return {
      ok: false,
      reason: `${shown} has a character that a frame number does not use: letters A-Z, digits and one hyphen.`,
    };
  }
  if (frame.length === 17 && !frame.includes('-')) {
    return {
      ok: false,
      reason: `${shown} has 17 characters and no hyphen, as a vehicle identification number has: state which of the two it is.`,
    };
  }
  const [type = '', serial, ...more] = frame.split('-');
  if (serial === undefined || more.length > 0) {
    return {
      ok: false,
      reason: `${shown} has ${more.length + (serial === undefined ? 0 : 1)} hyphens; a frame number has one, between type and serial.`,
    };
  }
  if (!/[A-Z]/u.test(type) || !/^\d+$/u.test(serial)) {
    return {
      ok: false,
      reason: `${shown} is not built as type, hyphen, serial: the type has a letter in it and the serial is all digits.`,
    };
  }
  const count = type.length + serial.length;
  if (count < 9 || count > 12) {
    return { ok: false, reason: `${shown} has ${count} letters and digits; a frame number has 9 to 12.` };
  }
  return { ok: true, frame, tidied: frame !== text };
}
