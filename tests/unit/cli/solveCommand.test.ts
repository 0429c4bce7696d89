import { describe, expect, test } from 'vitest';
import { solveCommand } from '../../../src/cli/solveCommand.ts';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import type { Design } from '../../../src/model/design.ts';
import { designChecksum } from '../../../src/model/designChecksum.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { serialiseDesign } from '../../../src/model/serialiseDesign.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { buildReport } from '../../../src/report/buildReport.ts';
import { reportJson } from '../../../src/report/reportJson.ts';

async function run(args: string[], files: Record<string, string> = {}) {
  let out = '';
  let err = '';
  const content = (file: string) => {
    const text = files[file];
    return text === undefined ? Promise.reject(new Error('no such file')) : Promise.resolve(text);
  };
  const code = await solveCommand(args, {
    size_B: async (file) => (await content(file)).length,
    read: content,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

const eight = exampleById('eightResistors');
const bare: Design = { ...eight, baffle: { ...eight.baffle, fitted: false } };
const still: Design = { ...eight, fan: { ...eight.fan, supply_V: 2 } };

describe('npm run solve', () => {
  test('prints the report of a box that holds and ends with 0', async () => {
    const { code, out, err } = await run(['box.json'], { 'box.json': serialiseDesign(eight) });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('Eight in a row');
    expect(out.toLowerCase()).toContain('holds with little to spare');
  });

  test('prints how a figure was computed, and the list of those that it knows', async () => {
    const files = { 'box.json': serialiseDesign(eight) };
    const sound = await run(['--working=sound', 'box.json'], files);
    expect(sound.code).toBe(0);
    expect(sound.out).toContain('Sound over distance');
    expect((await run(['--working', 'box.json'], files)).out).toContain('film:3');
    const none = await run(['--working=film:99', 'box.json'], files);
    expect(none.code).toBe(2);
    expect(none.err).toContain('No working for film:99');
  });

  test('ends with 1 for a box that does not hold, and for one that has no answer', async () => {
    const hot = await run(['box.json'], { 'box.json': serialiseDesign(bare) });
    expect(hot.code).toBe(1);
    expect(hot.out.toLowerCase()).toContain('does not hold');
    const dead = await run(['box.json'], { 'box.json': serialiseDesign(still) });
    expect(dead.code).toBe(1);
    expect(dead.out).not.toBe('');
  });

  test('prints the checksum that the sheet of the same design carries', async () => {
    const { out } = await run(['box.json'], { 'box.json': serialiseDesign(eight) });
    expect(out).toContain(`Checksum ${designChecksum(eight)},`);
    const turned = await run(['box.json'], { 'box.json': JSON.stringify(eight) });
    expect(turned.out).toContain(designChecksum(eight));
  });

  test('prints JSON for programs', async () => {
    const { code, out } = await run(['--json', 'box.json'], { 'box.json': serialiseDesign(eight) });
    expect(code).toBe(0);
    expect(typeof JSON.parse(out)).toBe('object');
  });

  test.each(['metric', 'inch'] as const)('prints the very JSON that the page saves, %s', async (system) => {
    const { out } = await run(['--json', ...(system === 'inch' ? ['--inch'] : []), 'box.json'], {
      'box.json': serialiseDesign(eight),
    });
    const outcome = solveSystem(toCore(eight));
    // On the page the report carries its day and the state of the fields.
    const report = buildReport(eight, outcome, {
      system,
      date: '25 November 2026',
      stale: false,
      checksum: designChecksum(eight),
    });
    expect(out).toBe(reportJson(report, outcome));
    expect(out).not.toContain('November');
  });

  test('ends with 2 for bad input, with the place and the reason and nothing else', async () => {
    const text = serialiseDesign(eight).replace('"finCount": 9', '"finCount": 9.5');
    const { code, out, err } = await run(['box.json'], { 'box.json': text });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(
      'box.json: sink.finCount: This has to be a whole number, and is 9.5. Allowed is a whole number from 2 to 200.\n',
    );
  });

  test('tells line and column of a file that is no JSON', async () => {
    const { code, err } = await run(['box.json'], { 'box.json': '{\n  "format" "x"\n}' });
    expect(code).toBe(2);
    expect(err).toContain('line 2, column 12');
  });

  test('ends with 2 for a file that is not there or is huge', async () => {
    expect(await run(['gone.json'])).toEqual({
      code: 2,
      out: '',
      err: 'gone.json: cannot be read: no such file\n',
    });
    const huge = await run(['huge.json'], { 'huge.json': ' '.repeat(6_000_000) });
    expect(huge).toEqual({
      code: 2,
      out: '',
      err: 'huge.json: The file has 6 MB; a design file has at most 5 MB.\n',
    });
  });

  test.each([
    [[], 'No file given.'],
    [['a.json', 'b.json'], 'One file at a time; these are 2.'],
    [['a.json', '--verbose'], 'Unknown option --verbose.'],
    [['-x'], 'Unknown option -x.'],
  ])('ends with 2 for arguments %j', async (args, reason) => {
    const { code, out, err } = await run(args, { 'a.json': '{}', 'b.json': '{}' });
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err.startsWith(`${reason}\n\nUsage:`)).toBe(true);
  });

  test('explains itself', async () => {
    const { code, out } = await run(['--help']);
    expect(code).toBe(0);
    expect(out).toMatch(/--json[\s\S]*Exit code/);
  });
});
