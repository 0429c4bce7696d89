interface Group {
  readonly sum: number;
  readonly count: number;
}

const levelOf = ({ sum, count }: Group) => sum / count;

/**
 * Places on a line, as near as may be to where they are wanted, at least `apart` from one another and within the ends.
 * The order is kept. Those that would touch move together about their common mean, which is the least movement in all.
 */
export function spread(wanted: readonly number[], apart: number, low: number, high: number): number[] {
  const groups: Group[] = [];
  wanted.forEach((place, index) => {
    // Less `apart` for each one before, keeping the distance is keeping the order.
    let group: Group = { sum: place - index * apart, count: 1 };
    for (
      let last = groups.at(-1);
      last !== undefined && levelOf(last) > levelOf(group);
      last = groups.at(-1)
    ) {
      group = { sum: last.sum + group.sum, count: last.count + group.count };
      groups.pop();
    }
    groups.push(group);
  });
  const highest = Math.max(low, high - (wanted.length - 1) * apart);
  return groups
    .flatMap((group) => Array.from({ length: group.count }, () => levelOf(group)))
    .map((level, index) => Math.min(Math.max(level, low), highest) + index * apart);
}
