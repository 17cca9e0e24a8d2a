import { describe, expect, test } from 'vitest';
import { allFaults } from './all-faults.ts';
import { blanksIn } from './blanks-in.ts';
import { pluggedRing, rivetedSill, softRing } from './faults-of-joints.ts';
import { bondedQuarter, hemmedDoor, sectionedPost } from './faults-of-seams.ts';
import { batteryOut } from './faults-of-the-battery-out.ts';
import { bondedRail } from './faults-of-the-bonded-rail.ts';
import { roofAndScreen } from './faults-of-the-outside-read.ts';
import { weldedSkin } from './faults-of-the-welded-skin.ts';
import { wholeJob } from './faults-of-the-whole-job.ts';
import { measuredRing } from './measured-ring.ts';
import { coldRail } from './faults-of-work.ts';
import { judgeText, ruleIds } from './judge-text.ts';
import { changed, electric, lineOf, rail, ring, skin } from './one-change.ts';
import { releasedElectric, releasedRing } from './released.ts';
import { releasedRing as recordedRing } from './released-ring.ts';

// Each plan here is a plan that is cleared, with exactly one thing wrong. No such plan may come out cleared; each near miss
// beside it must. What is a fault is common practice of the trade; the rules name their sources.

describe('one thing wrong is found, on its line, and never cleared', () => {
  test.each([
    ['ring', ring],
    ['rail', rail],
    ['cold rail', coldRail],
    ['skin', skin],
    ['electric sill', electric],
    ['released ring', releasedRing],
    ['released electric sill', releasedElectric],
    ['recorded ring', recordedRing],
    ['ring of softer steel', softRing],
    ['ring by plugs', pluggedRing],
    ['riveted sill', rivetedSill],
    ['measured ring', measuredRing],
    ['whole job', wholeJob],
    ['battery out', batteryOut],
    ['bonded rail', bondedRail],
    ['sectioned post', sectionedPost],
    ['bonded quarter', bondedQuarter],
    ['hemmed door', hemmedDoor],
    ['welded skin', weldedSkin],
    ['roof and screen', roofAndScreen],
  ])('the %s plan itself is cleared', (_name, plan) => {
    expect(ruleIds(judgeText(plan))).toEqual([]);
  });

  test.each(allFaults.map((fault) => [fault.name, fault] as const))('%s', (_name, fault) => {
    const text = changed(fault.plan, fault.changes);
    const report = judgeText(text);
    const found = report.findings.filter(({ finding }) => finding.rule === fault.rule);
    expect(found.map(({ finding }) => finding.severity)).toContain(fault.severity);
    expect(report.verdict).toBe(fault.severity === 'stop' ? 'stopped' : report.verdict);
    expect(['held', 'stopped']).toContain(report.verdict);
    expect(found.map(({ place }) => place.line)).toContain(lineOf(text, fault.on));
    expect(blanksIn(report)).toEqual([]);
  });
});
