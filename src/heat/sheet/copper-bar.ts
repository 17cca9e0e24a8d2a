import { conductLap } from './conduct-lap.ts';
import type { SheetField, SheetTask } from './conduct-sheet.ts';
import { cell } from '../cell.ts';
import { copper } from '../metal/copper.ts';
import { lapGrid } from './lap-grid.ts';

/** A copper bar pressed on one face of a strip, across its whole width. */
export interface CopperBar {
  readonly fromM: number;
  readonly toM: number;
  readonly thicknessM: number;
  /** W/(m²·K) between bar and sheet. */
  readonly contact: number;
}

/**
 * `conductSheet` for a strip with a copper bar on it: the bar takes up heat through its contact, carries it along and
 * gives it back when the sheet has become the cooler of the two. It starts at ambient temperature and loses nothing
 * to the air, and the face of the sheet under it neither: errs high.
 */
export function conductUnderBar(
  task: SheetTask,
  bar: CopperBar,
): { readonly field: SheetField; readonly positionsM: Float64Array } {
  const { positionsM } = task.grid;
  const grid = lapGrid(
    { heatedEndM: cell(positionsM, positionsM.length - 1), otherFromM: bar.fromM, otherEndM: bar.toM },
    5e-4,
    1.06,
  );
  const { properties, thicknessM, cooledFaces } = task;
  const { heated } = conductLap({
    ...task,
    grid,
    heated: { properties, thicknessM, cooledFaces },
    other: { properties: copper, thicknessM: bar.thicknessM, cooledFaces: 0 },
    contact: bar.contact,
  });
  return { field: heated, positionsM: grid.positionsM };
}
