import type { CheckGroup } from '../../../src/report/evidence/checkRecord.ts';
import { trustSentences } from '../../../src/report/evidence/trustParagraph.ts';

const marked = /(<!-- evidence -->)[\s\S]*?(<!-- \/evidence -->)/;

/** The readme with what these checks come to between its two marks. */
export function withEvidence(readme: string, groups: readonly CheckGroup[]): string {
  if (!marked.test(readme)) throw new Error('the readme has no place for the evidence');
  const said = trustSentences(groups).join(' ').replaceAll('\u202f', ' ');
  return readme.replace(marked, (_, before, after) => `${before}${said}${after}`);
}
