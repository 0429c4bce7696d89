import { onPage, rest } from './page.mjs';

/**
 * From a key press to the painted verdict, in real Chromium on the built page with the eight-resistor example.
 *
 * Two clocks, since neither tells all. «Frame made» runs from the browser's own time stamp of the key to the task after
 * the next frame: handler, solve, rendering, style, layout and paint lists are in it, the raster is not; it knows tenths
 * of a millisecond. «Shown» is the browser's Event Timing entry, from the same stamp to the frame on the screen; it has
 * the raster and the wait for the screen's next beat in it, and knows steps of 8 ms and nothing below 16 ms. The
 * reference is a bare text field in the same page, typed into in the same run: what a key costs where nobody listens.
 */
const words = ['1.25 mm', '1/16 in', '0.9', '1,6 mm', '62.5 mil', '2.2 mm', '0.8 mm'];
/** Swift: the pause comes after the word. Slow: charts and sheet are drawn between any two keys. */
const paces = [
  { name: 'swift', gap_ms: 120 },
  { name: 'slow', gap_ms: 300 },
];
const rounds = 2;
const pause_ms = 1000;
const aim_ms = 50;

/**
 * @typedef {{ made_ms: number, shown_ms: number, answer: string }} Key
 * @typedef {{ start_ms: number, length_ms: number }} LongTask
 * @typedef {{ keys: Key[], tasks: LongTask[], lastKey_ms: number }} Record
 * @typedef {{ keys: Key[], afterPause: LongTask[], late: number }} Typed
 */

/** Runs in the page: takes the time of every key from here on. */
function watchKeys() {
  const answerShown = () =>
    ['#will-it-hold p', '[aria-label="Streams of air"]']
      .map((place) => document.querySelector(place)?.textContent)
      .join(' ');
  const record = { keys: /** @type {Key[]} */ ([]), tasks: /** @type {LongTask[]} */ ([]), lastKey_ms: 0 };
  Object.assign(window, { record, answerShown });
  /** @type {Map<number, Key>} */
  const byStamp = new Map();
  addEventListener(
    'keydown',
    ({ timeStamp, key }) => {
      // The key that selects all is none that types.
      if (key.length > 1) return;
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          const made_ms = performance.now() - timeStamp;
          const answer = answerShown();
          const measured = { made_ms, shown_ms: 16, answer };
          byStamp.set(timeStamp, measured);
          record.keys.push(measured);
          record.lastKey_ms = performance.now();
        };
        port2.postMessage(null);
      });
    },
    { capture: true },
  );
  new PerformanceObserver((list) => {
    for (const { name, startTime, duration } of list.getEntries()) {
      const measured = byStamp.get(startTime);
      if (measured && (name === 'keydown' || name === 'input')) {
        measured.shown_ms = Math.max(measured.shown_ms, duration);
      }
    }
  }).observe(/** @type {PerformanceObserverInit} */ ({ type: 'event', durationThreshold: 16 }));
  new PerformanceObserver((list) => {
    for (const { startTime, duration } of list.getEntries())
      record.tasks.push({ start_ms: startTime, length_ms: duration });
  }).observe({ type: 'longtask' });
}

/** @param {readonly number[]} values @param {number} share */
function quantile(values, share) {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** @param {readonly number[]} values */
const spread = (values) =>
  [quantile(values, 0.5), quantile(values, 0.95), Math.max(...values)]
    .map((value) => value.toFixed(1).padStart(7))
    .join(' ');

/** @param {import('playwright').Page} page @returns {Promise<Record>} */
const takeRecord = (page) =>
  page.evaluate(() => {
    const { record } = /** @type {{ record: Record }} */ (/** @type {unknown} */ (window));
    const taken = structuredClone(record);
    Object.assign(record, { keys: [], tasks: [], lastKey_ms: 0 });
    return taken;
  });

/**
 * One word and the pause after it.
 * @param {import('playwright').Page} page
 * @param {import('playwright').Locator} box
 * @param {string} word
 * @param {number} gap_ms
 * @returns {Promise<Typed>}
 */
async function typeWord(page, box, word, gap_ms) {
  await box.focus();
  await box.selectText();
  await takeRecord(page);
  for (const key of word) {
    await page.keyboard.press(key);
    await rest(gap_ms);
  }
  await rest(pause_ms);
  const last = await page.evaluate('answerShown()');
  const { keys, tasks, lastKey_ms } = await takeRecord(page);
  return {
    keys,
    afterPause: tasks.filter(({ start_ms }) => start_ms > lastKey_ms),
    late: keys.at(-1)?.answer === last ? 0 : 1,
  };
}

/** @param {Typed} sum @param {Typed} more */
function add(sum, { keys, afterPause, late }) {
  sum.keys.push(...keys);
  sum.afterPause.push(...afterPause);
  sum.late += late;
}

/** @returns {Typed} */
const nothing = () => ({ keys: [], afterPause: [], late: 0 });

await onPage(async (page) => {
  const box = page.getByRole('textbox', { name: /^Side clearance/ });
  await box.waitFor();
  await page.evaluate(() => {
    const bare = document.createElement('input');
    bare.setAttribute('aria-label', 'Reference');
    document.body.append(bare);
  });
  const bare = page.getByRole('textbox', { name: 'Reference' });
  await rest(3000);
  await page.evaluate(watchKeys);
  // Once for nothing, so that the machine's own warming up is in neither.
  for (const word of words) for (const each of [box, bare]) await typeWord(page, each, word, 20);

  console.log(
    'From key press to painted verdict, eight-resistor example, built page      p50     p95     max',
  );
  for (const { name, gap_ms } of paces) {
    const typed = nothing();
    const reference = nothing();
    // By turns, so that a busy machine troubles both alike.
    for (let round = 0; round < rounds; round++) {
      for (const word of words) {
        add(typed, await typeWord(page, box, word, gap_ms));
        add(reference, await typeWord(page, bare, word, gap_ms));
      }
    }
    report(name, gap_ms, typed, reference);
  }
});

/**
 * @param {string} name
 * @param {number} gap_ms
 * @param {Typed} typed
 * @param {Typed} reference
 */
function report(name, gap_ms, { keys, afterPause, late }, reference) {
  const made = keys.map(({ made_ms }) => made_ms);
  const answers = new Set(keys.map(({ answer }) => answer)).size;
  const p95 = quantile(made, 0.95);
  const reference_p95 = quantile(
    reference.keys.map(({ made_ms }) => made_ms),
    0.95,
  );
  const row = (/** @type {string} */ label, /** @type {readonly number[]} */ values) =>
    console.log(`  ${label.padEnd(64)} ${spread(values)} ms`);
  console.log(`${name}, a key each ${gap_ms} ms: ${keys.length} keys, ${answers} different answers`);
  row('frame made', made);
  row(
    'frame made, bare field',
    reference.keys.map(({ made_ms }) => made_ms),
  );
  row(
    'shown, in steps of 8 ms from 16 ms',
    keys.map(({ shown_ms }) => shown_ms),
  );
  row(
    'shown, bare field',
    reference.keys.map(({ shown_ms }) => shown_ms),
  );
  console.log(
    `  p95 is ${(p95 / reference_p95).toFixed(2)} × the bare field’s; aim ${aim_ms} ms: ${p95 <= aim_ms ? 'met' : 'NOT met'}`,
  );
  console.log(
    `  answers that came later than the frame after their key: ${late} of ${words.length * rounds}`,
  );
  const longest = afterPause.reduce((most, { length_ms }) => Math.max(most, length_ms), 0);
  const total = afterPause.reduce((sum, { length_ms }) => sum + length_ms, 0);
  console.log(
    `  after the pause: ${afterPause.length} tasks over 50 ms in ${words.length * rounds} pauses, the longest ${longest.toFixed(0)} ms, ${(total / words.length / rounds).toFixed(0)} ms a pause`,
  );
}
