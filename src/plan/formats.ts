import { dimensions } from '../quantity/dimension.ts';
import type { Dimension } from '../quantity/dimension.ts';
import { readDate, readMoment } from '../quantity/iso-date.ts';
import { readFreeEnd } from '../quantity/read-free-end.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import { readSize } from '../quantity/read-size.ts';
import { readSignedLength } from '../quantity/read-signed-length.ts';
import { readSignedVoltage } from '../quantity/read-signed-voltage.ts';
import { readWheelSetting } from '../quantity/read-wheel-setting.ts';
import { readYears } from '../quantity/year-range.ts';
import { deniedStep } from './denied-step.ts';

/** Why a text is not of its format; undefined when it is. */
export type FormatFault = (text: string) => string | undefined;

/**
 * The formats that the plan's schema names: one a dimension (`energy per length` is written `energy-per-length`), and the
 * forms of sizes, dates, years, coordinates and planned steps. The validator asks whether, the findings ask why: both ask here.
 */
export const formatFaults: Readonly<Record<string, FormatFault>> = {
  ...Object.fromEntries(dimensions.map((dimension) => [formatOf(dimension), faultOf(dimension)])),
  'free-end': (text) => reasonOf(readFreeEnd(text)),
  size: (text) => reasonOf(readSize(text)),
  'signed-length': (text) => reasonOf(readSignedLength(text)),
  'signed-voltage': (text) => reasonOf(readSignedVoltage(text)),
  'wheel-setting': (text) => reasonOf(readWheelSetting(text)),
  'calendar-date': (text) => reasonOf(readDate(text)),
  moment: (text) => reasonOf(readMoment(text)),
  years: (text) => reasonOf(readYears(text)),
  // YAML reads a bare `no` as text; taken for the step in words it would say the opposite of what its author meant.
  'step-in-words': deniedStep,
};

/** The same as yes or no, for the compiled validator. */
export const formats: Readonly<Record<string, (text: string) => boolean>> = Object.fromEntries(
  Object.entries(formatFaults).map(([name, fault]) => [name, (text: string) => fault(text) === undefined]),
);

function formatOf(dimension: Dimension): string {
  return dimension.replaceAll(' ', '-');
}

function faultOf(dimension: Dimension): FormatFault {
  return (text) => reasonOf(readQuantity(text, dimension));
}

function reasonOf(
  reading: { readonly ok: true } | { readonly ok: false; readonly reason: string },
): string | undefined {
  return reading.ok ? undefined : reading.reason;
}
