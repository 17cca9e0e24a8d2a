import { readWithin } from './read-quantity.ts';
import { senseFault } from './sense.ts';
import type { Sense } from './sense.ts';

/** A setting of a wheel: an angle in degrees, or, of toe alone, a length in mm as older data sheets give it. */
export type WheelSettingReading =
  | { readonly ok: true; readonly value: number; readonly unit: '°' | 'mm' }
  | { readonly ok: false; readonly reason: string };

// Far beyond any wheel that stands straight ahead; 30° is the half degree of somebody who lost the mark of the minutes.
const angles: Sense = { article: 'a wheel setting', lowest: -20, highest: 20 };
const lengths: Sense = { article: 'a wheel setting', lowest: -60, highest: 60 };

/** A sign, degrees and minutes, or minutes alone. Typesetters and keyboards have several marks for each. */
const minutesForm = /^([+\-−]?)(?:(\d{1,2})\s?[°º˚]\s?)?(\d{1,3}(?:\.\d+)?)\s?['′’´]$/u;

/**
 * Reads what an alignment bench prints: -0°30', 30', -0.5°, 2 mm or 0.08 in. `value` is in ° or mm, as `unit` says: toe in mm cannot be
 * made into an angle without the diameter at which it was measured, so nothing is converted.
 */
export function readWheelSetting(text: string): WheelSettingReading {
  const trimmed = text.trim();
  const [whole, sign, degrees, minutes] = minutesForm.exec(trimmed) ?? [];
  if (whole !== undefined)
    return fromMinutes(trimmed, sign === '-' || sign === '−', degrees, Number(minutes));
  if (/["″”]$/u.test(trimmed)) return refused(trimmed, 'ends with a mark that can be seconds or inches');
  if (/[°º˚]\s*\d|['′’´]$/u.test(trimmed))
    return refused(trimmed, 'is no angle that can be read for certain');
  const isLength = /[a-zµμ]$/iu.test(trimmed) && !/(?:deg|degrees?|[°º˚]\s*C)$/iu.test(trimmed);
  if (/^[+\-−]?(?:\d+(?:\.\d+)?|\.\d+)$/u.test(trimmed)) return refused(trimmed, 'has no unit');
  const reading = isLength ? readWithin(text, 'length', lengths) : readWithin(text, 'angle', angles);
  if (!reading.ok) return reading;
  return { ok: true, value: reading.value, unit: isLength ? 'mm' : '°' };
}

/** Minutes beyond 59 beside degrees are a slip of the pen; alone they are how some benches print toe. */
function fromMinutes(
  text: string,
  isNegative: boolean,
  degrees: string | undefined,
  minutes: number,
): WheelSettingReading {
  if (degrees !== undefined && minutes >= 60)
    return { ok: false, reason: `"${text}" has 60 minutes or more beside its degrees: 60' are 1°.` };
  const size = Number(degrees ?? 0) + minutes / 60;
  // The added zero turns -0 into 0.
  const value = (isNegative ? -size : size) + 0;
  const reason = senseFault(value, angles, '°', text);
  return reason === undefined ? { ok: true, value, unit: '°' } : { ok: false, reason };
}

function refused(text: string, why: string): WheelSettingReading {
  return { ok: false, reason: `"${text}" ${why}: write -0°30', -0.5° or, of toe, 2 mm.` };
}
