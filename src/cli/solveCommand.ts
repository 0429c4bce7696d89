import { solveSystem } from '../core/system/solveSystem.ts';
import { designChecksum } from '../model/designChecksum.ts';
import { largestDesignFile_B, parseDesignText, tooLarge } from '../model/designText.ts';
import type { UnitSystem } from '../model/say.ts';
import { toCore } from '../model/toCore.ts';
import { buildReport } from '../report/buildReport.ts';
import { reportJson } from '../report/reportJson.ts';
import { reportText } from '../report/reportText.ts';

/** What the command touches of the world; replaced in tests. */
export interface Terminal {
  readonly size_B: (file: string) => Promise<number>;
  readonly read: (file: string) => Promise<string>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

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
  const text = await readFile(request.file, terminal);
  if (text === null) return 2;
  const read = parseDesignText(text);
  if (!read.ok) {
    for (const { path, reason } of read.problems) {
      terminal.err(`${request.file}: ${path === '' ? '' : `${path}: `}${reason}\n`);
    }
    return 2;
  }
  for (const note of read.notes) terminal.err(`${request.file}: note: ${note}\n`);
  const outcome = solveSystem(toCore(read.design));
  const report = buildReport(read.design, outcome, {
    system: request.system,
    checksum: designChecksum(read.design),
  });
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

async function readFile(file: string, terminal: Terminal): Promise<string | null> {
  try {
    const size_B = await terminal.size_B(file);
    if (size_B > largestDesignFile_B) {
      terminal.err(`${file}: ${tooLarge(size_B)}\n`);
      return null;
    }
    return await terminal.read(file);
  } catch (error) {
    terminal.err(`${file}: cannot be read: ${error instanceof Error ? error.message : String(error)}\n`);
    return null;
  }
}
