/** A label in so many rows, broken between words so that the longest row is as short as can be. */
export function rowsOf(label: string, count = 1): string[] {
  const words = label.split(' ');
  if (count <= 1 || words.length === 1) return [label];
  let best: string[] = [label];
  for (let cut = 1; cut < words.length; cut++) {
    const rows = [words.slice(0, cut).join(' '), ...rowsOf(words.slice(cut).join(' '), count - 1)];
    if (longest(rows) < longest(best)) best = rows;
  }
  return best;
}

function longest(rows: readonly string[]): number {
  return Math.max(...rows.map((row) => row.length));
}
