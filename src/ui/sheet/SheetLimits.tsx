import type { Report } from '../../report/types.ts';
import { most } from './measures.ts';

export function SheetLimits({ report: { limits, notes } }: { readonly report: Report }) {
  return (
    <section className="sheet-limits">
      <h2>Limits, most urgent first</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Limit</th>
            <th scope="col">Where</th>
            <th scope="col" className="number">
              Value
            </th>
            <th scope="col" className="number">
              Limit
            </th>
            <th scope="col" className="number">
              Margin
            </th>
            <th scope="col" className="number">
              Load up to
            </th>
            <th scope="col">Verdict</th>
            <th scope="col" className="number">
              Source
            </th>
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
      <ul className="sheet-notes">
        {notes.slice(0, most.notes).map((note) => (
          <li key={note.text}>
            <b>{note.severityWord}:</b> {note.text}
          </li>
        ))}
        {notes.length > most.notes && (
          <li>{notes.length - most.notes} more notes stand on the screen and in the report.</li>
        )}
      </ul>
    </section>
  );
}
