import type { PartKind } from '../../generated/plan-types.ts';
import { isJoinedIn } from './joined-in.ts';
import type { OperationSurvey, Survey } from '../survey.ts';

/** Something that a plan says was done, and when. */
export interface DatedEvent {
  /** What a sentence calls it, without an article: wheel alignment. */
  readonly name: string;
  /** As written. */
  readonly done: string;
  readonly at: string;
  /** Id of the part that it was done at. */
  readonly part?: string;
  /** What it is of, where it is only compared with others of the same: an end of the vehicle, a part. */
  readonly about?: string;
}

/** The joints of a part that is welded, bonded or riveted in; one without a day of its own was made on that of its operation. */
export function joined(work: OperationSurvey, what: string): readonly DatedEvent[] {
  if (!isJoinedIn(work)) return [];
  const { operation, joints, part, at } = work;
  return joints.flatMap(({ joint, at: place }) => {
    const done = joint.done ?? operation.done;
    return done === undefined
      ? []
      : [{ name: `${what} ${part.name}`, done, at: `${joint.done === undefined ? at : place}/done` }];
  });
}

/** The tightening of the bolts of parts of some kinds. */
export function tightened({ operations }: Survey, kinds: readonly PartKind[]): readonly DatedEvent[] {
  return operations.flatMap(({ operation, part, at }) => {
    const done = operation.fasteners?.tightened;
    if (done === undefined || part.part.kind === undefined || !kinds.includes(part.part.kind)) return [];
    const ofPart = part.part.id === undefined ? {} : { part: part.part.id };
    return [
      { name: `tightening of the bolts of ${part.name}`, done, at: `${at}/fasteners/tightened`, ...ofPart },
    ];
  });
}

export function isFitted({ operation }: OperationSurvey): boolean {
  return operation.do === 'replace' || operation.do === 'remove and refit';
}
