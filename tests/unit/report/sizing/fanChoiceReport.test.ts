import { describe, expect, test } from 'vitest';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { examples } from '../../../../src/model/examples/examples.ts';
import { fanChoiceReport } from '../../../../src/report/sizing/fanChoiceReport.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { fanChoiceJob } from '../../../../src/studies/sizing/fanChoice.ts';
import { fansAtHand } from '../../../../src/studies/sizing/fansAtHand.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');
const fans = fansAtHand(examples.map(({ design }) => design));
const report = (margin_K: number, among = fans, design = eightResistors) => {
  const question = { design, target: { ask: 'everyLimit', margin_K } as const, fans: among };
  return fanChoiceReport(question, runJob(fanChoiceJob, question), 'metric');
};

describe('fans in words', () => {
  test('begin with the smallest that does', () => {
    const { sentence, rows, tables } = report(5);
    expect(plain(sentence)).toBe(
      'Smallest fan at hand that does: Invented 60 mm fan with a dip, 12 V, 60 mm, at 6.59 V or more, 19 dB(A).',
    );
    expect(rows.map(({ state }) => state)).toEqual(['does', 'does', 'does', 'short']);
    expect(tables[0]?.rows).toHaveLength(4);
  });

  test('say which comes nearest where none does', () => {
    expect(plain(report(40).sentence)).toMatch(
      /^None of the 4 fans at hand reaches the target\. Nearest comes Invented 80 mm fan, 12 V, at 12 V: the derating line/,
    );
    expect(plain(report(40, fans.slice(0, 1)).sentence)).toMatch(
      /^The one fan at hand does not reach the target\./,
    );
  });

  test('tell how many of it stand in the box', () => {
    const two = { ...eightResistors, fan: { ...eightResistors.fan, sideBySide: 2 } };
    expect(report(5, fans, two).sentence).toContain('that does, 2 of it as now:');
  });

  test('without any fan say so', () => {
    expect(report(5, []).sentence).toBe('No fan is at hand.');
  });
});
