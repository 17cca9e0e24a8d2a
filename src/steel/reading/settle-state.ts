import type { StatedState } from './designation-forms.ts';
import type { GradeRow } from '../table/grade-row.ts';

export interface SettledState {
  readonly rows: readonly GradeRow[];
  readonly notes: readonly string[];
}

/**
 * Chooses between rows of one grade in different states. On a body, boron steel counts as hardened unless its delivered
 * state is stated, and even then it keeps its class, since the part is hardened before it is fitted. Aluminium counts as
 * delivered: the gain of the paint oven is not promised by the standard.
 */
export function settleState(rows: readonly GradeRow[], stated: StatedState | undefined): SettledState {
  const boron = rows.filter(
    (row) => row.familyKey === 'press_hardening' || row.familyKey === 'quenched_tempered_boron',
  );
  const [firstBoron] = boron;
  if (firstBoron !== undefined) return boronState(rows, firstBoron.designation, stated);
  if (stated === 'paint baked') return bakedState(rows);
  const delivered = rows.filter((row) => row.state !== 'paint baked');
  if (delivered.length === 0 || delivered.length === rows.length) return { rows, notes: [] };
  return { rows: delivered, notes: ['After the paint oven the sheet stands higher than delivered.'] };
}

/** Strengths after the paint oven where the table has them; they are typical, not promised. */
function bakedState(rows: readonly GradeRow[]): SettledState {
  const baked = rows.filter((row) => row.state === 'paint baked');
  if (baked.length > 0) return { rows: baked, notes: ['Strengths after the paint oven are typical ones.'] };
  return {
    rows,
    notes: ['The table has no strengths after the paint oven; those of the delivered sheet are given.'],
  };
}

function boronState(rows: readonly GradeRow[], name: string, stated: StatedState | undefined): SettledState {
  const hardened = rows.filter((row) => row.state === 'hardened');
  const delivered = rows.filter((row) => row.state === 'as delivered');
  if (stated === 'as delivered') {
    return {
      rows: delivered.length > 0 ? delivered : rows,
      notes: [`${name} is named as delivered, but on a body it is hardened; its class is press-hardened.`],
    };
  }
  const tempered = rows.some((row) => row.familyKey === 'quenched_tempered_boron');
  const [before] = delivered;
  if (stated === 'quenched and tempered' && tempered) {
    return {
      rows,
      notes: [
        `${name} is named as quenched and tempered; press-hardened it stands higher, and its class is that.`,
      ],
    };
  }
  const notes: string[] = [];
  if (stated !== 'hardened' && (tempered || before !== undefined)) {
    notes.push(`The state of ${name} is not stated; it counts as hardened.`);
  }
  if (before?.tensileMinMpa !== undefined && hardened.length > 0) {
    notes.push(`Before hardening it stands at ${before.tensileMinMpa}–${before.tensileMaxMpa ?? '…'} MPa.`);
  }
  if (tempered) {
    notes.push(`${temperedRange(rows)} press-hardened it stands higher.`);
    return { rows: rows.map(asStock), notes };
  }
  return { rows: hardened.length > 0 ? hardened : rows, notes };
}

/** What the standard promises of stock, which does not bound a pressed part from above. */
function temperedRange(rows: readonly GradeRow[]): string {
  const [row] = rows.filter((one) => one.familyKey === 'quenched_tempered_boron');
  if (row?.tensileMinMpa === undefined || row.tensileMaxMpa === undefined)
    return 'Its standard gives minima for quenched and tempered stock;';
  return `Its standard gives ${row.tensileMinMpa}–${row.tensileMaxMpa} MPa for quenched and tempered stock;`;
}

/** The minima of stock are no figures of a pressed part: it has at least these, and how much more is not told. */
function asStock(row: GradeRow): GradeRow {
  const { tensileMaxMpa: _tensile, yieldMaxMpa: _yield, ...minima } = row;
  return { ...minima, tensileMinOnlyIf: 'it is quenched and tempered stock' };
}
