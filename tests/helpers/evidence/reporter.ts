import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Reporter, TestModule } from 'vitest/node';
import type { CheckGroup } from '../../../src/report/evidence/checkRecord.ts';
import { projectFiles } from '../projectFiles.ts';
import { differences } from './compare.ts';
import { formatChecks, gatherChecks } from './gather.ts';
import { withEvidence } from './readme.ts';

const file = 'src/report/evidence/checks.json';
const how = 'UPDATE=1 npx vitest run --project core tests/published tests/meta';

/** Files whose tests are evidence: the published checks, and the worked examples of all cards. */
function evidenceFiles(): string[] {
  const published = projectFiles('tests/published', ['.test.ts']).map(({ path }) => path);
  return [...published, 'tests/meta/cards.test.ts'];
}

/**
 * Gathers the published checks of a run into the file that the page of evidence shows, or says where that file is not
 * what the run made. A run of some of the files, or one with a failure, says nothing.
 */
export default class EvidenceReporter implements Reporter {
  private root = '';

  onInit(vitest: { readonly config: { readonly root: string } }): void {
    this.root = vitest.config.root;
  }

  onTestRunEnd(modules: readonly TestModule[]): void {
    const wanted = evidenceFiles();
    const pathOf = (module: TestModule) => relative(this.root, module.moduleId).split(sep).join('/');
    const ran = new Map(modules.map((module) => [pathOf(module), module]));
    const found = wanted.flatMap((path) => ran.get(path) ?? []);
    const tests = found.flatMap((module) =>
      [...module.children.allTests()].map((test) => ({
        file: pathOf(module),
        title: test.fullName.split(' > ').join(': '),
        state: test.result().state,
        checks: test.meta().checks ?? [],
      })),
    );
    if (found.length < wanted.length || tests.some(({ state }) => state !== 'passed')) return;
    this.keepOrCompare(gatherChecks(tests));
  }

  private keepOrCompare(made: readonly CheckGroup[]): void {
    const path = join(this.root, file);
    const readme = join(this.root, 'README.md');
    if (process.env.UPDATE) {
      writeFileSync(path, formatChecks(made));
      writeFileSync(readme, withEvidence(readFileSync(readme, 'utf8'), made));
      console.log(`${file} and the readme have the evidence of this run.`);
      return;
    }
    const kept: CheckGroup[] = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : [];
    const apart = differences(kept, made);
    if (apart.length === 0) return;
    const more = apart.length > 8 ? `\n  and ${apart.length - 8} more` : '';
    console.error(
      `\nFAILED: ${file} is not what this run made. ${how} writes it anew; look at what changed before you keep it.\n` +
        apart
          .slice(0, 8)
          .map((each) => `  ${each}`)
          .join('\n') +
        more,
    );
    process.exitCode = 1;
  }
}
