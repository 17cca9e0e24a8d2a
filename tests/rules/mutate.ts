// What would be noticed if a rule were written otherwise: `npm run -s mutate`, with `-- --survivors` also what would not.
import { builtInPacksWithCases } from '../../src/generated/built-in-packs.ts';
import { allFaults } from '../all-faults.ts';
import { scoresOf, scoreText } from './mutation-score.ts';

let hasSurvivingStop = false;
for (const pack of builtInPacksWithCases()) {
  process.stdout.write(`${pack.name} ${pack.version}\n`);
  for (const score of scoresOf(pack, allFaults)) {
    process.stdout.write(`  ${scoreText(score)}\n`);
    const isStop = score.severity === 'stop';
    if (isStop && score.survivors.length > 0) hasSurvivingStop = true;
    if (!isStop && !process.argv.includes('--survivors')) continue;
    for (const survivor of score.survivors) process.stdout.write(`    ${survivor}\n`);
  }
}
process.exitCode = hasSurvivingStop ? 1 : 0;
