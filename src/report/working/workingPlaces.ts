import type { LimitKey, PassageKind, StageKey } from '../../core/system/outcome.ts';
import type { Place } from '../../core/system/working/book.ts';
import { limitLabels, passageLabels, stageLabels } from '../wording.ts';
import { counted, listed, small } from '../words.ts';

/** Where a step stands, alike places told together: "sinks 1 to 9, without fan". Empty for the box as a whole. */
export function placesText(places: readonly Place[]): string {
  const said = [...new Set(places.map(groupOf))].map((group) =>
    groupText(
      group,
      places.filter((place) => groupOf(place) === group),
    ),
  );
  const where = listed([...new Set(said.filter((text) => text !== ''))]);
  // What is alike with and without fan needs no word about it.
  const fan = places.every(({ stopped }) => stopped) ? 'without fan' : '';
  return [where, fan].filter((text) => text !== '').join(', ');
}

/** Places that are counted together. */
function groupOf({ part, key = '' }: Place): string {
  return part === 'passage' && key === 'fins'
    ? 'channels'
    : part === 'passage' || part === 'stage' || part === 'limit'
      ? `${part} ${key}`
      : part;
}

function groupText(group: string, places: readonly Place[]): string {
  const [kind = '', key = ''] = group.split(' ');
  const numbers = [...new Set(places.flatMap(({ index }) => (index === undefined ? [] : [index + 1])))];
  switch (kind) {
    case 'box':
      return '';
    case 'room':
      return 'air of the room';
    case 'plenum':
      return 'air in the plenum';
    case 'gap':
      return 'air in the gaps beside the row';
    case 'exhaust':
      return 'exhaust air';
    case 'sink':
    case 'resistor':
      return rowText(kind, numbers);
    case 'channels':
      return numbers.length > 0 ? `channels of ${rowText('sink', numbers)}` : passageLabels.fins;
    case 'fan':
      return numbers.length > 0 ? rowText('fan', numbers) : 'all fans';
    case 'stage':
      return stageLabels[key as StageKey];
    case 'passage':
      return passageLabels[key as PassageKind];
    default:
      return `limit: ${small(limitLabels[key as LimitKey])}`;
  }
}

/** "sink 3", "sinks 1 to 9", "resistors 1, 3 and 5". */
function rowText(noun: string, numbers: readonly number[]): string {
  const sorted = [...numbers].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const number of sorted) {
    const last = runs[runs.length - 1];
    if (last && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  const said = runs.flatMap(([from, to]) =>
    to > from + 1 ? [`${from} to ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`],
  );
  return `${counted(sorted.length, noun).replace(/^\d+ /, '')} ${listed(said)}`;
}
