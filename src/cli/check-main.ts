import { addCheckCommand } from './check/check-command.ts';
import { emptyProgram } from './empty-program.ts';
import { runProgram } from './run-program.ts';
import { today } from './today.ts';

// The command `check` alone, in a bundle of its own: a start takes as long as what it reads.
const program = emptyProgram();
addCheckCommand(program, today);
runProgram(program);
