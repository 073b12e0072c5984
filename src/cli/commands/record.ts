import { noEntries } from '../../formats/entry/run-entries.ts'
import { recordFileText, writeRecord } from '../../operations/write-record.ts'
import { writeRunSummary } from '../../operations/write-run-summary.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type Run } from '../command.ts'
import { loadRead, note, print, writeWhole } from '../io.ts'
import { paperOf, printingOf, wordsOf } from '../packet-rules.ts'

export const record: Run = async (args, options) => {
  const [run, readings, ...rest] = args
  const { output, json } = options
  if (run === undefined || readings === undefined || rest.length > 0 || (output === null && !json)) {
    throw badWords('record RUN.json READINGS.json -o RECORD.pdf, or with --json', args.join(' '))
  }
  const page = paperOf(options)
  const { judged, file } = await loadRead(run, readings)
  const printing = {
    page,
    lie: options.landscape ? ('landscape' as const) : ('portrait' as const),
    ...printingOf(options),
    sha256,
    entries: { ...noEntries, photoStrokes: file.photoStrokes },
    photos: null,
    print: wordsOf(options, judged.run.units),
  }
  if (json) print(recordFileText(judged, printing).trimEnd())
  if (output === null) return 0
  const { pdf, hash } = await (options.summary ? writeRunSummary : writeRecord)(judged, printing)
  await writeWhole(output, pdf)
  note(`wrote ${output}, record hash ${hash}`)
  return 0
}
