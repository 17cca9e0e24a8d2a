import { readFileSync } from 'node:fs';
import { temperedHardness } from '../../../src/heat/strength/tempering.ts';
import type { CheckRow } from './check-row.ts';

/**
 * tempering_holdout.csv: published hardness of tempered martensite. Its own column of errors is another model's, and is summed
 * up here only to show that the file is the one described. Then the tool's working curve on the steel of 0.31 % C, from 490 HV;
 * the curve was fitted to these data among others, so it is no independent check.
 */
export function temperingHoldoutRows(): readonly CheckRow[] {
  const [head = '', ...lines] = readFileSync(new URL('../tempering_holdout.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n');
  const names = head.split(',');
  const rows = lines.map((line) => {
    const cells = line.split(',');
    const at = (name: string): string => cells[names.indexOf(name)] ?? '';
    return { set: at('set'), number: (name: string) => Number(at(name)) };
  });
  const ofFile = (set: string): Statistics =>
    statistics(rows.filter((row) => row.set === set).map((row) => row.number('error')));
  const file = 'tempering_holdout.csv, statistics by its writer';
  const own = statistics(
    rows
      .filter((row) => row.set === 'heldout_HJ1945')
      .map((row) => {
        const celsius = row.number('T_C');
        const left = temperedHardness({ seconds: [0, row.number('t_s')], celsius: [celsius, celsius] }, 490);
        return left.state === 'tempered' ? left.hv - row.number('HV_converted') : Number.NaN;
      }),
  );
  const curve = 'Hollomon and Jaffe 1945, 0.31 % C, tempering_holdout.csv';
  const row = (
    what: string,
    source: string,
    expected: number,
    computed: number,
    absolute: number,
  ): CheckRow => ({ what, source, unit: 'HV', expected, computed, allowed: { absolute } });
  const other = ofFile('leave_one_out_1026');
  const heldOut = ofFile('heldout_HJ1945');
  return [
    row('other model, steel 1026: mean error', file, -18.6, other.mean, 0.06),
    row('other model, steel 1026: RMS error', file, 21.6, other.rms, 0.06),
    row('other model, 0.31 % C: mean error', file, 3.9, heldOut.mean, 0.06),
    row('other model, 0.31 % C: RMS error', file, 24.7, heldOut.rms, 0.06),
    row('other model, 0.31 % C: most too hard', file, 51, heldOut.most, 0.5),
    row('working curve, 0.31 % C: mean error (0 wanted)', curve, 0, own.mean, 10),
    row('working curve, 0.31 % C: RMS error (25 to beat)', curve, 0, own.rms, 25),
    row('working curve, 0.31 % C: most too hard (0 wanted)', curve, 0, own.most, 40),
    row('working curve, 0.31 % C: most too soft (0 wanted)', curve, 0, own.least, 60),
  ];
}

interface Statistics {
  readonly mean: number;
  readonly rms: number;
  readonly least: number;
  readonly most: number;
}

function statistics(errors: readonly number[]): Statistics {
  const mean = errors.reduce((sum, one) => sum + one, 0) / errors.length;
  const rms = Math.sqrt(errors.reduce((sum, one) => sum + one * one, 0) / errors.length);
  return { mean, rms, least: Math.min(...errors), most: Math.max(...errors) };
}
