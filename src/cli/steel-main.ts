// The command `steel` alone: a bundle of its own, a third as long, which is all that its start reads (bin/start.js).
import { emptyProgram } from './empty-program.ts';
import { runProgram } from './run-program.ts';
import { addSteelCommand } from './steel/steel-command.ts';

const planish = emptyProgram();
addSteelCommand(planish);
runProgram(planish);
