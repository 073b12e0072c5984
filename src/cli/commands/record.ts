import { noEntries } from '../../formats/entry/run-entries.ts'
import { writeRecord } from '../../operations/write-record.ts'
import { sha256 } from '../../store/sha256.ts'
import { english } from '../../words/english.ts'
import { badWords, type Command } from '../command.ts'
import { loadRead, say, writeWhole } from '../io.ts'
import { paperOf, printingOf } from '../packet-rules.ts'

export const recordCommand: Command = {
  name: 'record',
  words: 'RUN.json READINGS.json -o RECORD.pdf',
  summary:
    'The inspection record as PDF: every requirement with reading, limit and verdict, findings, what is not proven.',
  help: [
    '  -o FILE         where to write it',
    '  --page PAGE     letter (the default), tabloid, A4 or A3; --landscape has pages of text lie',
    '  --date DATE     when it is printed, as 2026-05-12T10:05-06:00; now by default',
    '  --author NAME   who prints it',
  ].join('\n'),
  run: async (args, options) => {
    const [run, readings, ...rest] = args
    const { output } = options
    if (run === undefined || readings === undefined || rest.length > 0 || output === null) {
      throw badWords('record RUN.json READINGS.json -o RECORD.pdf', args.join(' '))
    }
    const page = paperOf(options)
    const { judged, file } = await loadRead(run, readings)
    const { pdf, hash } = await writeRecord(judged, {
      page,
      lie: options.landscape ? 'landscape' : 'portrait',
      ...printingOf(options),
      sha256,
      entries: { ...noEntries, photoStrokes: file.photoStrokes },
      photos: null,
      print: english(judged.run.units),
    })
    await writeWhole(output, pdf)
    say(`wrote ${output}, record hash ${hash}`)
    return 0
  },
}
