import { writeRun } from '../../formats/run/write-run.ts'
import { pinned } from '../../operations/pin-run.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type Run } from '../command.ts'
import { loadRequired, note, print, writeWhole } from '../io.ts'

export const pin: Run = async (words, { output }) => {
  const [file, ...rest] = words
  if (file === undefined || rest.length > 0) throw badWords('pin RUN.json [-o PINNED.json]', words.join(' '))
  const text = writeRun(pinned(await loadRequired(file), sha256).run)
  if (output === null) print(text.trimEnd())
  else {
    await writeWhole(output, text)
    note(`wrote ${output}`)
  }
  return 0
}
