import { writeRun } from '../../formats/run/write-run.ts'
import { contentId } from '../../operations/content-id.ts'
import { reviseRun } from '../../operations/revise-run.ts'
import { sha256 } from '../../store/sha256.ts'
import { badWords, type Run } from '../command.ts'
import { loadRun, note, print, printJson, shownName, soundValue, writeWhole } from '../io.ts'

export const revise: Run = async (words, { output, json, because }) => {
  const [before, asked, ...rest] = words
  if (before === undefined || asked === undefined || rest.length > 0 || output === null)
    throw badWords('revise PINNED.json ASKED.json -o NEXT.json', words.join(' '))
  const files = { before: shownName(before), asked: shownName(asked) }
  const [from, to] = [await loadRun(before), await loadRun(asked)]
  const revise = (version: string) => soundValue(reviseRun(files, from, to, version, because))
  const { run, kept, gone, added, askedOtherwise } = revise(contentId(revise('0').run, sha256))
  await writeWhole(output, writeRun(run))
  if (json) printJson({ version: run.version!.id, kept, gone, added, askedOtherwise })
  else
    for (const [words, ids] of [
      ['keeps its readings', kept],
      ['keeps its place, asked otherwise', askedOtherwise],
      ['gone', gone],
      ['new', added],
    ] as const)
      print(`${words}: ${ids.length === 0 ? 'nothing' : ids.join(', ')}`)
  note(`wrote ${output}`)
  return 0
}
