import { isPermanent } from '../joint/joint-methods.ts';
import type { OperationSurvey } from '../survey.ts';

/** Whether an operation welds, bonds or rivets its part into the vehicle. */
export function isJoinedIn({ operation, joints, offVehicle }: OperationSurvey): boolean {
  if (offVehicle || (operation.planned === false && operation.done === undefined)) return false;
  return joints.some(({ joint }) => joint.method !== undefined && isPermanent(joint.method));
}
