import type { CheckGroup, CheckRecord } from '../../../src/report/evidence/checkRecord.ts';

/** Checks by what they are about; the same one twice has a number. */
function byName(groups: readonly CheckGroup[]): Map<string, { from: string; check: CheckRecord }> {
  const named = new Map<string, { from: string; check: CheckRecord }>();
  for (const { checks, ...from } of groups) {
    for (const check of checks) {
      const base = `${from.file}: ${check.test}: ${check.quantity}`;
      let name = base;
      for (let n = 2; named.has(name); n++) name = `${base} (${n})`;
      named.set(name, { from: JSON.stringify(from), check });
    }
  }
  return named;
}

/** Two units of the sixth digit: another machine's sines end in other bits. */
const near = (a: number, b: number) => Math.abs(a - b) <= 2.1e-5 * Math.max(Math.abs(a), Math.abs(b), 1e-3);

function areAlike(a: CheckRecord, b: CheckRecord): boolean {
  const { computed, deviation, allowed, ...text } = a;
  const { computed: otherComputed, deviation: otherDeviation, allowed: otherAllowed, ...otherText } = b;
  return (
    JSON.stringify(text) === JSON.stringify(otherText) &&
    near(computed, otherComputed) &&
    Math.abs(deviation - otherDeviation) <= 4e-5 * (1 + Math.abs(deviation)) &&
    allowed.every((each, i) => Math.abs(each - (otherAllowed[i] ?? 0)) <= 0.011 * Math.abs(each))
  );
}

/** What a run made and a file says, apart: a sentence a check; none where they are the same. */
export function differences(kept: readonly CheckGroup[], made: readonly CheckGroup[]): string[] {
  const [before, now] = [byName(kept), byName(made)];
  const told: string[] = [];
  for (const [name, { from, check }] of now) {
    const old = before.get(name);
    if (old === undefined) told.push(`new: ${name}`);
    else if (old.from !== from) told.push(`of another source, kind or method: ${name}`);
    else if (!areAlike(old.check, check))
      told.push(`${old.check.computed} became ${check.computed}: ${name}`);
  }
  for (const name of before.keys()) if (!now.has(name)) told.push(`gone: ${name}`);
  return told;
}
