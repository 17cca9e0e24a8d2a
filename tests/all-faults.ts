import type { Fault } from './fault.ts';
import { faultsBesideFalseAlarms } from './faults-beside-false-alarms.ts';
import { faultsOfContradictions } from './faults-of-contradictions.ts';
import { faultsOfCovering } from './faults-of-covering.ts';
import { faultsOfOddWords } from './faults-of-odd-words.ts';
import { faultsOfWhatComesAfter } from './faults-of-what-comes-after.ts';
import { faultsOfBondsLoaded } from './faults-of-bonds-loaded.ts';
import { faultsOfBoltsAndChecks } from './faults-of-bolts-and-checks.ts';
import { faultsOfClaims } from './faults-of-claims.ts';
import { faultsOfCuring } from './faults-of-curing.ts';
import { faultsAroundSeams } from './faults-around-seams.ts';
import { faultsOfDays } from './faults-of-days.ts';
import { faultsOfEvidence } from './faults-of-evidence.ts';
import { faultsOfEvasion } from './faults-of-evasion.ts';
import { faultsOfHandling } from './faults-of-handling.ts';
import { faultsOfHoursAndDays } from './faults-of-hours-and-days.ts';
import { faultsOfJointClaims } from './faults-of-joint-claims.ts';
import { faultsOfJoints } from './faults-of-joints.ts';
import { faultsOfJoining } from './faults-of-joining.ts';
import { faultsOfMakingSafe } from './faults-of-making-safe.ts';
import { faultsOfMeasuring } from './faults-of-measuring.ts';
import { faultsOfOpenCutsAndPanes } from './faults-of-open-cuts-and-panes.ts';
import { faultsOfOwnWords } from './faults-of-own-words.ts';
import { faultsOfPagesAndHours } from './faults-of-pages-and-hours.ts';
import { faultsOfPapers } from './faults-of-papers.ts';
import { faultsOfPeopleAndCodes } from './faults-of-people-and-codes.ts';
import { faultsOfPreparing } from './faults-of-preparing.ts';
import { faultsOfPlainWords } from './faults-of-plain-words.ts';
import { faultsOfProcess } from './faults-of-process.ts';
import { faultsOfReadiness } from './faults-of-readiness.ts';
import { faultsOfRecords } from './faults-of-records.ts';
import { faultsOfRelease } from './faults-of-release.ts';
import { faultsOfSafety } from './faults-of-safety.ts';
import { faultsOfRows } from './faults-of-rows.ts';
import { faultsOfSeams } from './faults-of-seams.ts';
import { faultsOfTheBatteryOut } from './faults-of-the-battery-out.ts';
import { faultsOfTheBondedRail } from './faults-of-the-bonded-rail.ts';
import { faultsOfTheDatum } from './faults-of-the-datum.ts';
import { faultsOfTheWholeJob } from './faults-of-the-whole-job.ts';
import { faultsOfTheWeldedSkin } from './faults-of-the-welded-skin.ts';
import { faultsOfTheOutsideRead } from './faults-of-the-outside-read.ts';
import { faultsOfTheSecondRead } from './faults-of-the-second-read.ts';
import { faultsOfUndoneChecks } from './faults-of-undone-checks.ts';
import { faultsOfWork } from './faults-of-work.ts';

/** Every plan with one thing wrong, and the rule that a person says must find it. */
export const allFaults: readonly Fault[] = [
  ...faultsOfDays,
  ...faultsOfWork,
  ...faultsOfOwnWords,
  ...faultsOfPapers,
  ...faultsOfPeopleAndCodes,
  ...faultsOfSafety,
  ...faultsOfMakingSafe,
  ...faultsOfHandling,
  ...faultsOfRelease,
  ...faultsOfMeasuring,
  ...faultsOfTheDatum,
  ...faultsOfRecords,
  ...faultsOfEvasion,
  ...faultsOfEvidence,
  ...faultsOfJoints,
  ...faultsOfRows,
  ...faultsOfTheWholeJob,
  ...faultsOfTheBatteryOut,
  ...faultsOfTheBondedRail,
  ...faultsOfClaims,
  ...faultsOfBoltsAndChecks,
  ...faultsOfSeams,
  ...faultsAroundSeams,
  ...faultsOfCuring,
  ...faultsOfCovering,
  ...faultsOfBondsLoaded,
  ...faultsOfJoining,
  ...faultsOfUndoneChecks,
  ...faultsOfTheWeldedSkin,
  ...faultsOfHoursAndDays,
  ...faultsOfTheSecondRead,
  ...faultsOfTheOutsideRead,
  ...faultsOfProcess,
  ...faultsOfPreparing,
  ...faultsOfReadiness,
  ...faultsOfContradictions,
  ...faultsOfPlainWords,
  ...faultsBesideFalseAlarms,
  ...faultsOfJointClaims,
  ...faultsOfOddWords,
  ...faultsOfWhatComesAfter,
  ...faultsOfOpenCutsAndPanes,
  ...faultsOfPagesAndHours,
];
