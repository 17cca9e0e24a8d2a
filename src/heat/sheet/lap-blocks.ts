import { cell } from '../cell.ts';

/** What one sheet of a lap asks of its nodes in a step: `taken` · T = `given` + what runs to the neighbours. W/K, W. */
export interface LayerRows {
  readonly taken: Float64Array;
  readonly given: Float64Array;
  readonly toRight: Float64Array;
}

/** A node's pair of temperatures is `free` + `lead` · (pair of the next node); `lead` is two by two. */
export interface BlockRows {
  readonly sourceCelsius: number;
  /** Nodes that heat has reached in either sheet, as in `conductSheet`. */
  live: number;
  /** W/K through the contact. */
  readonly across: Float64Array;
  readonly leadHH: Float64Array;
  readonly leadHO: Float64Array;
  readonly leadOH: Float64Array;
  readonly leadOO: Float64Array;
  readonly freeH: Float64Array;
  readonly freeO: Float64Array;
}

/** The Thomas algorithm with blocks of two by two. */
export function eliminate(blocks: BlockRows, heated: LayerRows, other: LayerRows, held: boolean): void {
  const { across, leadHH, leadHO, leadOH, leadOO, freeH, freeO } = blocks;
  let leftH = 0;
  let leftO = 0;
  for (let i = 0; i < blocks.live; i++) {
    const fixed = held && i === 0;
    const contact = across[i] ?? Number.NaN;
    const rightH = heated.toRight[i] ?? Number.NaN;
    const rightO = other.toRight[i] ?? Number.NaN;
    const before = i - 1;
    const hh0 = i === 0 ? 0 : (leadHH[before] ?? Number.NaN);
    const ho0 = i === 0 ? 0 : (leadHO[before] ?? Number.NaN);
    const oh0 = i === 0 ? 0 : (leadOH[before] ?? Number.NaN);
    const oo0 = i === 0 ? 0 : (leadOO[before] ?? Number.NaN);
    const pullH = i === 0 ? 0 : leftH * (freeH[before] ?? Number.NaN);
    const pullO = i === 0 ? 0 : leftO * (freeO[before] ?? Number.NaN);
    const hh = fixed ? 1 : (heated.taken[i] ?? Number.NaN) + leftH * (1 - hh0) + rightH + contact;
    const ho = fixed ? 0 : -contact - leftH * ho0;
    const oh = -contact - leftO * oh0;
    const oo = (other.taken[i] ?? Number.NaN) + leftO * (1 - oo0) + rightO + contact;
    const gH = fixed ? blocks.sourceCelsius : (heated.given[i] ?? Number.NaN) + pullH;
    const gO = (other.given[i] ?? Number.NaN) + pullO;
    const onwardH = fixed ? 0 : rightH;
    const whole = hh * oo - ho * oh;
    leadHH[i] = (oo * onwardH) / whole;
    leadHO[i] = (-ho * rightO) / whole;
    leadOH[i] = (-oh * onwardH) / whole;
    leadOO[i] = (hh * rightO) / whole;
    freeH[i] = (oo * gH - ho * gO) / whole;
    freeO[i] = (hh * gO - oh * gH) / whole;
    leftH = rightH;
    leftO = rightO;
  }
}

/** Answers the largest change in K. */
export function substitute(blocks: BlockRows, heated: Float64Array, other: Float64Array): number {
  const { leadHH, leadHO, leadOH, leadOO, freeH, freeO } = blocks;
  let change = 0;
  let nextH = 0;
  let nextO = 0;
  for (let i = blocks.live - 1; i >= 0; i--) {
    const h = cell(freeH, i) + cell(leadHH, i) * nextH + cell(leadHO, i) * nextO;
    const o = cell(freeO, i) + cell(leadOH, i) * nextH + cell(leadOO, i) * nextO;
    change = Math.max(change, Math.abs(h - cell(heated, i)), Math.abs(o - cell(other, i)));
    heated[i] = h;
    other[i] = o;
    nextH = h;
    nextO = o;
  }
  return change;
}
