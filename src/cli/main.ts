import { program } from './program.ts';
import { runProgram } from './run-program.ts';

runProgram(program());
