import { solveCommand } from './solveCommand.ts';
import { thisTerminal } from './terminal.ts';

process.exitCode = await solveCommand(process.argv.slice(2), thisTerminal());
