import { writeRun } from '../../formats/run/write-run.ts'
import { pinned } from '../../operations/pin-run.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type Command } from '../command.ts'
import { loadRequired, print, say, writeWhole } from '../io.ts'

export const pinCommand: Command = {
  name: 'pin',
  words: 'RUN.json [-o PINNED.json]',
  summary: 'Pins a run to the layout chosen and its sheets by content, so that nothing it is judged by moves any more.',
  help: '  -o FILE   where to write it; standard output by default',
  run: async (words, { output }) => {
    const [file, ...rest] = words
    if (file === undefined || rest.length > 0) throw badWords('pin RUN.json [-o PINNED.json]', words.join(' '))
    const text = writeRun(pinned(await loadRequired(file), sha256).run)
    if (output === null) print(text.trimEnd())
    else {
      await writeWhole(output, text)
      say(`wrote ${output}`)
    }
    return 0
  },
}
