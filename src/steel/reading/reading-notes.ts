import type { DesignationForm } from './designation-forms.ts';
import type { Material } from '../material.ts';

/** Why several readings stand for one name, and what tells them apart; undefined for a single one. */
export function notesOfReadings(readings: readonly Material[]): string | undefined {
  const [first] = readings;
  if (first === undefined || readings.length < 2) return undefined;
  const oneName = readings.every((one) => one.designation === first.designation);
  const names = readings.map((one) => one.designation);
  const ways = readings
    .map(({ designation, standard }) => {
      if (oneName) return standard;
      const shared = names.filter((name) => name === designation).length > 1;
      return shared ? `${designation} of ${standard}` : designation;
    })
    .join('; ');
  const ask = oneName ? 'state the standard with it' : 'state the whole designation';
  const ranks = readings.some((one) => /^CR\d$/.test(one.designation));
  const falling = ranks ? ' In BS 1449 the scale of these ranks runs the other way.' : '';
  return `The name has ${readings.length} readings (${ways}); ${ask}. The strongest counts.${falling}`;
}

/**
 * Whether nothing but the standard is left open: several rows of the table that all have one class and one family. Not so for a
 * rank such as CR4, whose scale runs the other way in a standard that has no row.
 */
export function onlyStandardsDiffer(readings: readonly Material[]): boolean {
  const [first] = readings;
  if (
    first === undefined ||
    readings.length < 2 ||
    readings.some((one) => /^(?:CR|HR)\d$/.test(one.designation))
  )
    return false;
  return readings.every(
    (one) => one.from === 'table' && one.class === first.class && one.family === first.family,
  );
}

/** What follows from the words that stand beside the grade. */
export function notesOfForm(form: DesignationForm, readings: readonly Material[]): readonly string[] {
  const notes: string[] = [];
  const [first] = readings;
  if (form.laminated === true) {
    notes.push(
      'Laminated sheet: two skins with a plastic core. Heat destroys the core, and a weld through it smokes and spits; the skins decide the class.',
    );
  }
  if (form.softZone === true) {
    notes.push(
      'A hardened part with soft zones has two strengths, the soft one near 500 MPa; which one a cut meets the name does not say. The hard one counts; state the zones.',
    );
  }
  if (form.statedState === 'paint baked' && first?.family === 'bake-hardening') {
    notes.push('The paint oven raises the yield of bake-hardening sheet by about 35 MPa; a flame does not.');
  }
  return notes;
}
