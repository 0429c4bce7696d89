import type { Report } from '../../report/types.ts';
import { most } from './measures.ts';

const heads = ['Limit', 'Where', '>Value', '>Limit', '>Margin', '>Load up to', 'Verdict', '>Source'];

export function SheetLimits({ report: { limits, notes } }: { readonly report: Report }) {
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
              <td className="number">{row.value}</td>
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
          {notes.slice(0, most.notes).map((note) => (
            <li key={note.text}>
              <b>{note.severityWord}:</b> {note.text}
            </li>
          ))}
          {notes.length > most.notes && (
            <li>{notes.length - most.notes} more notes stand on the screen and in the report.</li>
          )}
        </ul>
      )}
    </section>
  );
}
