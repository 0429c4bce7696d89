import type { Design } from '../../../model/design.ts';
import { unknownWords } from '../../../report/bench/benchWords.ts';
import { allUnknowns, mostUnknowns, type Unknown } from '../../../studies/bench/types.ts';
import { Switch } from '../../kit/Switch.tsx';
import styles from './Bench.module.css';

interface Props {
  readonly design: Design;
  readonly chosen: readonly Unknown[];
  readonly onChoose: (chosen: readonly Unknown[]) => void;
}

/** Up to three unknowns; one that cannot be chosen says why. */
export function UnknownChooser({ design, chosen, onChoose }: Props) {
  return (
    <fieldset className={styles.unknowns}>
      <legend>Up to three things may be fitted at once</legend>
      {allUnknowns.map((unknown) => {
        const { label, means } = unknownWords[unknown];
        const isChosen = chosen.includes(unknown);
        const hindered = isChosen ? null : hindrance(design, chosen, unknown);
        const id = `bench-unknown-${unknown}`;
        return (
          <div key={unknown}>
            <Switch
              id={id}
              checked={isChosen}
              disabled={hindered !== null}
              describedBy={`${id}-means`}
              onSwitch={(on) =>
                onChoose(allUnknowns.filter((each) => (each === unknown ? on : chosen.includes(each))))
              }
            />
            <label htmlFor={id}>{label}</label>
            <small id={`${id}-means`}>{hindered ?? means}</small>
          </div>
        );
      })}
    </fieldset>
  );
}

function hindrance({ baffle }: Design, chosen: readonly Unknown[], unknown: Unknown): string | null {
  if (!baffle.fitted && (unknown === 'leak' || unknown === 'slot'))
    return 'This design has no baffle, so that there is nothing of the kind.';
  return chosen.length >= mostUnknowns ? 'Three are chosen: leave one of them out first.' : null;
}
