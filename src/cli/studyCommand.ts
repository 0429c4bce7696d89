import { tableFile } from '../io/tableFile.ts';
import type { UnitSystem } from '../model/say.ts';
import { studyText } from '../report/studyReport.ts';
import type { Pool } from '../workers/studies/pool.ts';
import { readDesignFile } from './readDesignFile.ts';
import { studyKinds } from './studyKinds.ts';
import type { Terminal } from './terminal.ts';

/** 0: the study has an answer. 2: nothing was computed. */
export type StudyExitCode = 0 | 2;

const usage = `Usage: npm run study -- WHAT FILE [key=value …] [--csv[=TABLE]] [--inch]

Varies the fan box of a design file (*.throughfin.json) and prints what comes of it.

${Object.entries(studyKinds)
  .map(([name, { says, options }]) => `  ${name.padEnd(12)} ${says}${optionLines(options)}`)
  .join('\n')}

  --csv    print the first table as comma-separated values, or the one named
  --inch   inches, cfm and °F instead of millimetres, m³/h and °C
  --help   this text

Exit code: 0 answered, 2 nothing computed: bad input.
`;

function optionLines(options: Readonly<Record<string, string>>): string {
  return Object.entries(options)
    .map(([key, says]) => `\n${' '.repeat(15)}${`${key}=`.padEnd(10)} ${says}`)
    .join('');
}

interface Request {
  readonly what: string;
  readonly file: string;
  readonly options: Readonly<Record<string, string>>;
  /** Identity of a table, empty for the first; `null` for the whole report. */
  readonly csv: string | null;
  readonly system: UnitSystem;
}

/** `npm run study`: one design file and one question in, the answer as text or a table as CSV out. */
export async function studyCommand(
  args: readonly string[],
  terminal: Terminal,
  pool: Pool,
): Promise<StudyExitCode> {
  if (args.includes('--help') || args.includes('-h')) {
    terminal.out(usage);
    return 0;
  }
  const refuse = (reason: string) => {
    terminal.err(`${reason}\n\n${usage}`);
    return 2 as const;
  };
  const request = readArguments(args);
  if (typeof request === 'string') return refuse(request);
  const { what, file, options, csv, system } = request;
  const kind = studyKinds[what];
  if (kind === undefined) return refuse(`No study ${what}.`);
  const strange = Object.keys(options).find((key) => !(key in kind.options));
  if (strange !== undefined) return refuse(`${what} knows no ${strange}=.`);
  const design = await readDesignFile(file, terminal);
  if (design === null) return 2;
  const report = await kind.run(pool, design, options, system, (path) => readDesignFile(path, terminal));
  if (typeof report === 'string') return refuse(report);
  if (csv === null) {
    terminal.out(studyText(report));
    return 0;
  }
  const table = report.tables.find(({ id }) => csv === '' || id === csv);
  if (table === undefined)
    return refuse(`No table ${csv}. Tables: ${report.tables.map(({ id }) => id).join(', ')}.`);
  terminal.out(tableFile(table));
  return 0;
}

function readArguments(args: readonly string[]): Request | string {
  const flags = args.filter((arg) => arg.startsWith('-'));
  const unknown = flags.find((flag) => flag !== '--inch' && !/^--csv(=|$)/.test(flag));
  if (unknown !== undefined) return `Unknown option ${unknown}.`;
  const words = args.filter((arg) => !arg.startsWith('-'));
  const pairs = words.filter((word) => /^[\w-]+=/.test(word));
  const [what, file, ...more] = words.filter((word) => !pairs.includes(word));
  if (what === undefined) return 'No study named.';
  if (file === undefined) return 'No file given.';
  if (more.length > 0) return `One file at a time; ${more[0]} is one too many.`;
  return {
    what,
    file,
    options: Object.fromEntries(pairs.map((pair) => splitPair(pair))),
    csv: flags.find((flag) => flag.startsWith('--csv'))?.slice('--csv='.length) ?? null,
    system: flags.includes('--inch') ? 'inch' : 'metric',
  };
}

function splitPair(pair: string): [string, string] {
  const at = pair.indexOf('=');
  return [pair.slice(0, at), pair.slice(at + 1)];
}
