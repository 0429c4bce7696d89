/**
 * The points that no other beats in both costs, the first cost rising. Of equal ones the first is kept.
 * @param costs two numbers, less is better
 */
export function frontOf<T>(points: readonly T[], costs: (point: T) => readonly [number, number]): T[] {
  const sorted = points
    .map((point, index) => ({ point, index, costs: costs(point) }))
    .sort((a, b) => a.costs[0] - b.costs[0] || a.costs[1] - b.costs[1] || a.index - b.index);
  let least = Number.POSITIVE_INFINITY;
  return sorted.flatMap(({ point, costs: [, second] }) => {
    if (!(second < least)) return [];
    least = second;
    return [point];
  });
}
