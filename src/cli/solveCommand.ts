import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import { reported } from '../report/reportJob.ts';
import { reportJson } from '../report/reportJson.ts';
import { reportText } from '../report/reportText.ts';
import { workingReport } from '../report/working/workingReport.ts';
import { figuresText, workingText } from '../report/working/workingText.ts';
import { readDesignFile } from './readDesignFile.ts';
import type { Terminal } from './terminal.ts';

/** 0: the box holds, with much or little to spare. 1: it does not, or has no answer. 2: nothing was computed. */
export type ExitCode = 0 | 1 | 2;

const usage = `Usage: npm run solve -- FILE [--json] [--working[=FIGURE]] [--inch]

Computes the fan box of a design file (*.throughfin.json) and prints its report.

  --json     print the report as JSON, for programs
  --working  how a figure was computed, such as --working=film:3; without one, all figures that have a working
  --inch     inches, cfm and °F instead of millimetres, m³/h and °C
  --help     this text

Exit code: 0 holds (also with little to spare), 1 does not hold or has no answer, 2 nothing computed: bad input.
`;

interface Request {
  readonly file: string;
  readonly json: boolean;
  /** Figure whose working is asked for, empty for the list of them; `null` for the report. */
  readonly working: string | null;
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
  if (request.working !== null) return tellWorking(design, request.working, request.system, terminal);
  const { report, outcome } = reported({ design, prefs: { system: request.system } });
  terminal.out(request.json ? reportJson(report, outcome) : reportText(report));
  return outcome.ok && outcome.verdict.state !== 'fails' ? 0 : 1;
}

/** The working of one figure, or the list of them all. */
function tellWorking(design: Design, figure: string, system: UnitSystem, terminal: Terminal): ExitCode {
  const report = workingReport(design, system);
  const text = figure === '' ? figuresText(report) : workingText(report, figure);
  if (text === null) {
    terminal.err(`No working for ${figure}. --working alone lists all figures that have one.\n`);
    return 2;
  }
  terminal.out(text);
  return 0;
}

function readArguments(args: readonly string[]): Request | string {
  const known = ['--json', '--inch'];
  const unknown = args.find(
    (arg) => arg.startsWith('-') && !known.includes(arg) && !/^--working(=|$)/.test(arg),
  );
  if (unknown !== undefined) return `Unknown option ${unknown}.`;
  const files = args.filter((arg) => !arg.startsWith('-'));
  const [file] = files;
  if (file === undefined) return 'No file given.';
  if (files.length > 1) return `One file at a time; these are ${files.length}.`;
  const working = args.find((arg) => arg.startsWith('--working')) ?? null;
  return {
    file,
    json: args.includes('--json'),
    working: working?.slice('--working='.length) ?? null,
    system: args.includes('--inch') ? 'inch' : 'metric',
  };
}
