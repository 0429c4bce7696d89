import type { CheckGroup, CheckRecord } from '../../src/report/evidence/checkRecord.ts';

/** A check of 10.0 W/m²K, computed as 10.04; over it what a test wants otherwise. */
export function sampleCheck(over: Partial<CheckRecord> = {}): CheckRecord {
  return {
    test: 'a plate: at 60 °C',
    quantity: 'coefficient',
    unit: 'W/(m²·K)',
    printed: '10.0',
    computed: 10.04,
    deviation: 0.004,
    allowed: [-0.005, 0.005],
    ...over,
  };
}

/** One such check of a worked example in Lienhard; over it what a test wants otherwise. */
export function sampleGroup(over: Partial<CheckGroup> = {}): CheckGroup {
  return {
    subject: 'radiation',
    file: 'tests/published/radiation/coefficient.test.ts',
    source: 'lienhard',
    where: 'ex. 2.8',
    kind: 'worked example',
    methods: ['radiationFlux'],
    checks: [sampleCheck()],
    ...over,
  };
}
