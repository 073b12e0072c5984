import { noEntries } from '../../formats/entry/run-entries.ts'
import { writeRecord } from '../../operations/write-record.ts'
import { writeRunSummary } from '../../operations/write-run-summary.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type Run } from '../command.ts'
import { loadRead, note, writeWhole } from '../io.ts'
import { paperOf, printingOf, wordsOf } from '../packet-rules.ts'

export const record: Run = async (args, options) => {
  const [run, readings, ...rest] = args
  const { output } = options
  if (run === undefined || readings === undefined || rest.length > 0 || output === null) {
    throw badWords('record RUN.json READINGS.json -o RECORD.pdf', args.join(' '))
  }
  const page = paperOf(options)
  const { judged, file } = await loadRead(run, readings)
  const write = options.summary ? writeRunSummary : writeRecord
  const { pdf, hash } = await write(judged, {
    page,
    lie: options.landscape ? 'landscape' : 'portrait',
    ...printingOf(options),
    sha256,
    entries: { ...noEntries, photoStrokes: file.photoStrokes },
    photos: null,
    print: wordsOf(options, judged.run.units),
  })
  await writeWhole(output, pdf)
  note(`wrote ${output}, record hash ${hash}`)
  return 0
}
