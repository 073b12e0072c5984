import { writeStrip } from '../../operations/write-strip.ts'
import { badWords, type Command } from '../command.ts'
import { loadJudged, loadRequired, say, writeWhole } from '../io.ts'

const pages = ['web', 'letter', 'tabloid', 'A4', 'A3'] as const

export const stripCommand: Command = {
  name: 'strip',
  words: 'RUN.json -o STRIP.svg',
  summary: 'The to-scale picture of the run as SVG, with verdicts when readings are given.',
  help: [
    '  -o FILE            where to write it; further sheets of a long run get -2, -3 … before the ending',
    '  --readings FILE    draws the verdicts too',
    '  --page PAGE        web (one long strip, the default), letter, tabloid, A4 or A3',
  ].join('\n'),
  run: async (words, options) => {
    const [file, ...rest] = words
    const { output, readings } = options
    if (file === undefined || rest.length > 0 || output === null)
      throw badWords('strip RUN.json -o STRIP.svg', words.join(' '))
    const page = pages.find((one) => one === (options.page ?? 'web'))
    if (page === undefined) throw badWords(`--page ${pages.join(', ')}`, options.page!)
    const required = readings === null ? await loadRequired(file) : await loadJudged(file, readings)
    const sheets = writeStrip(required, page)
    for (const [i, svg] of sheets.entries()) {
      const path = i === 0 ? output : output.replace(/(\.[^./\\]*)?$/, (ending) => `-${i + 1}${ending}`)
      await writeWhole(path, svg)
      say(`wrote ${path}`)
    }
    return 0
  },
}
