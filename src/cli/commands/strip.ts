import { paperNames } from '../../core/units/paper-names.ts'
import { runViews, writeRunView, writeRunViewDxf } from '../../operations/write-strip.ts'
import { english } from '../../words/english.ts'
import { badWords, type Run } from '../command.ts'
import { loadJudged, loadRequired, note, writeWhole } from '../io.ts'

const pages = ['web', ...paperNames] as const

export const strip: Run = async (args, options) => {
  const [file, ...rest] = args
  const { output, readings } = options
  if (file === undefined || rest.length > 0 || output === null)
    throw badWords('strip RUN.json -o STRIP.svg|STRIP.dxf', args.join(' '))
  const page = pages.find((one) => one === (options.page ?? 'web'))
  if (page === undefined) throw badWords(`--page ${pages.join(', ')}`, options.page!)
  const view = runViews.find((one) => one === (options.view ?? 'strip'))
  if (view === undefined) throw badWords(`--view ${runViews.join(', ')}`, options.view!)
  const isDxf = /\.dxf$/i.test(output)
  if (isDxf && page !== 'web') throw badWords('no --page for a DXF file, which is drawn in true size', page)
  const required = readings === null ? await loadRequired(file) : await loadJudged(file, readings)
  const words = english(required.run.units)
  const sheets = isDxf ? writeRunViewDxf(required, view, '', words) : writeRunView(required, view, page, words)
  for (const [i, sheet] of sheets.entries()) {
    const path = i === 0 ? output : output.replace(/(\.[^./\\]*)?$/, (ending) => `-${i + 1}${ending}`)
    await writeWhole(path, sheet)
    note(`wrote ${path}`)
  }
  return 0
}
