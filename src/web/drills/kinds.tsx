import { rateOf } from '../../core/drill/intervals.ts'
import type { KindRecord } from '../../core/drill/next-drill.ts'
import { topicNamed } from '../../core/record/thing-read.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { say } from '../messages.ts'
import { percent } from './percent.ts'
import { words } from './words.ts'

/** Which kinds of faults are found and which are missed, with how much that tells. */
export function Kinds({ records }: { readonly records: readonly KindRecord[] }) {
  const w = words()
  return (
    <>
      <h2>{w.kinds}</h2>
      <p class="hint">{w.kindsHow}</p>
      <table class="drill-kinds">
        <thead>
          <tr>
            <th scope="col">{w.kind}</th>
            <th scope="col">{w.there}</th>
            <th scope="col">{w.found}</th>
            <th scope="col">{w.interval}</th>
          </tr>
        </thead>
        <tbody>
          {records.map(({ kind, there, found }) => {
            const { low, high } = rateOf(found, there)
            return (
              <tr key={kind}>
                <th scope="row">{say(topicNamed(kind, shippedSheets))}</th>
                <td>{there}</td>
                <td>{found}</td>
                <td>
                  <span class="drill-share" aria-hidden="true">
                    <i style={{ left: percent(low), right: percent(1 - high) }} />
                    <b style={{ left: percent(found / there) }} />
                  </span>
                  {w.debrief.from(percent(found / there), percent(low), percent(high))}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </>
  )
}
