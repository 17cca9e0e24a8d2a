// Prints the count of a vitest JSON report as `N passed, N failed`. A test file that could not be loaded ran none of its
// tests and counts as one that failed. Without a report nothing passed.
import { readFileSync } from 'node:fs';

let passed = 0;
let failed = 0;
try {
  const report = JSON.parse(readFileSync(process.argv[2], 'utf8'));
  passed = report.numPassedTests;
  failed = report.numFailedTests;
  failed += report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
} catch {
  // The run ended before vitest wrote anything; .ci/run leaves a status other than 0 for it.
}
process.stdout.write(`${passed} passed, ${failed} failed\n`);
