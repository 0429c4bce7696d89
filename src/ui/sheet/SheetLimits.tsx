import type { Report } from '../../report/types.ts';

import { StepMark } from './StepMark.tsx';

const heads = ['Limit', 'Where', '>Value', '>Limit', '>Margin', '>Load up to', 'Verdict', '>Source'];

interface Props {
  readonly report: Report;
  /** How many notes there is room for. */
  readonly notes: number;
}

export function SheetLimits({ report: { limits, notes }, notes: most }: Props) {
  return (
    <section className="sheet-limits">
      <h2>Limits, most urgent first</h2>
      <table>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col" className={head.startsWith('>') ? 'number' : undefined}>
                {head.replace('>', '')}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {limits.map((row) => (
            <tr key={row.key} className={row.state}>
              <th scope="row">{row.label}</th>
              <td>{row.where}</td>
              <td className="number">
                {row.value}
                <StepMark figure={row.amounts.value.figure} />
              </td>
              <td className="number">{row.limit}</td>
              <td className="number">{row.margin}</td>
              <td className="number">{row.loadFactor}</td>
              <td>{row.stateWord}</td>
              <td className="number">
                {row.footnote}
                {row.confirm ? ' †' : ''}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {notes.length > 0 && (
        <ul>
          {notes.slice(0, most).map((note) => (
            <li key={note.text}>
              <b>{note.severityWord}:</b> {note.text}
            </li>
          ))}
          {notes.length > most && (
            <li>{notes.length - most} more notes stand on the pages of tables and on the screen.</li>
          )}
        </ul>
      )}
    </section>
  );
}
