import type { UnitSystem } from '../model/say.ts';
import { reported } from '../report/reportJob.ts';
import { reportJson } from '../report/reportJson.ts';
import { reportText } from '../report/reportText.ts';
import { readDesignFile } from './readDesignFile.ts';
import type { Terminal } from './terminal.ts';

/** 0: the box holds, with much or little to spare. 1: it does not, or has no answer. 2: nothing was computed. */
export type ExitCode = 0 | 1 | 2;

const usage = `Usage: npm run solve -- FILE [--json] [--inch]

Computes the fan box of a design file (*.throughfin.json) and prints its report.

  --json   print the report as JSON, for programs
  --inch   inches, cfm and °F instead of millimetres, m³/h and °C
  --help   this text

Exit code: 0 holds (also with little to spare), 1 does not hold or has no answer, 2 nothing computed: bad input.
`;

interface Request {
  readonly file: string;
  readonly json: boolean;
  readonly system: UnitSystem;
}

/** `npm run solve`: one design file in, one report out. */
export async function solveCommand(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  if (args.includes('--help') || args.includes('-h')) {
    terminal.out(usage);
    return 0;
  }
  const request = readArguments(args);
  if (typeof request === 'string') {
    terminal.err(`${request}\n\n${usage}`);
    return 2;
  }
  const design = await readDesignFile(request.file, terminal);
  if (design === null) return 2;
  const { report, outcome } = reported({ design, prefs: { system: request.system } });
  terminal.out(request.json ? reportJson(report, outcome) : reportText(report));
  return outcome.ok && outcome.verdict.state !== 'fails' ? 0 : 1;
}

function readArguments(args: readonly string[]): Request | string {
  const known = ['--json', '--inch'];
  const unknown = args.find((arg) => arg.startsWith('-') && !known.includes(arg));
  if (unknown !== undefined) return `Unknown option ${unknown}.`;
  const files = args.filter((arg) => !arg.startsWith('-'));
  const [file] = files;
  if (file === undefined) return 'No file given.';
  if (files.length > 1) return `One file at a time; these are ${files.length}.`;
  return { file, json: args.includes('--json'), system: args.includes('--inch') ? 'inch' : 'metric' };
}
