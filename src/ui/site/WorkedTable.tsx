/** The worked section as a table whose figures open. */
import { type Library, LibraryProvider } from '../say/library'
import { Q } from '../say/Q'
import type { WorkedRow } from './worked'

export function WorkedTable({
  rows,
  library,
  caption
}: {
  readonly rows: readonly WorkedRow[]
  readonly library: Library
  readonly caption: string
}) {
  return (
    <LibraryProvider value={library}>
      <table class="data">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col" class="num">
              Boxed heart
            </th>
            <th scope="col" class="num">
              Free of heart
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.label}>
              <th scope="row">{row.label}</th>
              <td class="num">
                <Q q={row.boxed} />
              </td>
              <td class="num">{row.free ? <Q q={row.free} /> : 'none'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </LibraryProvider>
  )
}
