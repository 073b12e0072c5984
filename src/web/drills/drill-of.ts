import { type Drill, makeDrill } from '../../core/drill/make-drill.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { DrillRow } from '../data/drill-row.ts'

let last: { readonly run: string; readonly drill: Drill } | null = null

/** What is hidden in a practice run: made anew from its wish, and kept while the page is about that run. */
export function drillOf({ run, wish }: DrillRow, judged: JudgedRun): Drill {
  if (last?.run !== run)
    last = { run, drill: makeDrill(judged.model, judged.requirements, wish, instrumentsOf(judged.run)) }
  return last.drill
}
