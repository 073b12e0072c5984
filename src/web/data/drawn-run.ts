import { ok } from '../../core/result.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { stripDrawing } from '../../drawing/views/strip.ts'
import { stripInput } from '../../operations/strip-input.ts'
import { english } from '../../words/english.ts'
import { judgeKept } from './kept-run.ts'
import type { KeptRun, OpenedRun } from './run-source.ts'

/** The run with everything that is shown of it at once; apart from what judges it, since a list of runs draws no strip. */
export function openedRun(kept: KeptRun): OpenedRun {
  const judged = judgeKept(kept)
  if (!judged.ok) return { kept, drawn: judged }
  const { units } = judged.value.run
  const stripSvg = writeSvg(stripDrawing(stripInput(judged.value, english(units))))
  return { kept, drawn: ok({ judged: judged.value, stripSvg }) }
}
