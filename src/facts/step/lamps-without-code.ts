import { numberSays, ownSystem, systemInWords } from './code-system.ts';
import type { Code } from './code-system.ts';
import { saysNoLampLit } from './no-lamp-lit.ts';
import { saysNone } from './step-draft.ts';
import type { Survey } from '../survey.ts';

/** What says of a lamp that it was not lit. */
const unlit = /\b(?:no|not|none|never|off|out|without|goes out|went out)\b/i;

/**
 * Lamps of restraints, brakes, steering and traction voltage that were lit as the vehicle came and of whose system the first scan holds
 * no code, in words; undefined where there is none, where the scan is still to be made, or where its note speaks of the lamp.
 */
export function lampsWithoutCode({ plan }: Survey): string | undefined {
  const text = plan.job?.as_received?.warning_lamps;
  const scan = plan.verify?.scan_before;
  if (text === undefined || saysNoLampLit(text) || scan?.codes === undefined) return undefined;
  const { codes, note } = scan;
  const lit = text.split(/[,;/]|\band\b/).filter((one) => !unlit.test(one));
  const silent = lit.filter((one) => {
    const system = systemInWords(one);
    return system !== undefined && !codes.some((code) => tellsOf(system, code)) && !explains(note, system);
  });
  return silent.map((one) => one.trim()).join(', ') || undefined;
}

/** By its system or number, or by what is said of it. A lost line (U) may be of any of them. */
function tellsOf(system: string, code: Code): boolean {
  if (ownSystem(code, []).system === system) return true;
  if (systemInWords(code.explanation ?? '') === system) return true;
  const letter = (code.code ?? '').trim().charAt(0).toUpperCase();
  if (letter === 'U') return true;
  if (letter === 'C') return system === 'brake' || system === 'steering';
  const says = numberSays(code) ?? '';
  return system === 'restraint'
    ? says.includes('restraint')
    : says.includes('battery') && system === 'traction battery';
}

function explains(note: string | undefined, system: string): boolean {
  if (note === undefined || saysNone(note)) return false;
  return /\blamp/i.test(note) || systemInWords(note) === system;
}
