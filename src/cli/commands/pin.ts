import { writeRun } from '../../formats/run/write-run.ts'
import { contentId } from '../../operations/content-id.ts'
import { pinRun } from '../../operations/pin-run.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type Command } from '../command.ts'
import { loadRun, print, say, shownName, soundValue, writeWhole } from '../io.ts'

export const pinCommand: Command = {
  name: 'pin',
  words: 'RUN.json [-o PINNED.json]',
  summary: 'Pins a run to the layout chosen and its sheets by content, so that nothing it is judged by moves any more.',
  help: '  -o FILE   where to write it; standard output by default',
  run: async (words, { output }) => {
    const [file, ...rest] = words
    if (file === undefined || rest.length > 0) throw badWords('pin RUN.json [-o PINNED.json]', words.join(' '))
    const pinned = soundValue(pinRun(shownName(file), await loadRun(file), '-'))
    const { version } = pinned
    const text = writeRun(
      version?.id === '-' ? { ...pinned, version: { ...version, id: contentId(pinned, sha256) } } : pinned,
    )
    if (output === null) print(text.trimEnd())
    else {
      await writeWhole(output, text)
      say(`wrote ${output}`)
    }
    return 0
  },
}
