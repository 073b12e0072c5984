import { type SheetDifference, sheetDifferences, type ValueDifference } from '../../operations/sheet-differences.ts'
import { badWords, type Run } from '../command.ts'
import { words as inWords, print, printJson } from '../io.ts'
import { runsInFolder, runsInStore } from '../runs-at.ts'

export const shelf: Run = async (words, { store, json }) => {
  const [folder, ...rest] = words
  if (rest.length > 0 || (folder === undefined) === (store === null))
    throw badWords('shelf FOLDER or shelf --store PLACE', words.join(' '))
  const runs = store === null ? await runsInFolder(folder!) : await runsInStore(store)
  const differing = runs
    .map(({ where, run }) => ({ where, run: run.name, sheets: sheetDifferences(run) }))
    .filter(({ sheets }) => sheets.length > 0)
  if (json) printJson({ looked: runs.length, differing })
  else {
    for (const { where, run, sheets } of differing) {
      print(`${run} (${where})`)
      for (const sheet of sheets) printSheet(sheet)
    }
    print(`${differing.length} of ${runs.length} runs have sheets that are others on the shelf`)
  }
  return 0
}

function printSheet(difference: SheetDifference): void {
  print(`  ${inWords.say({ kind: 'other sheet on shelf', ...difference })}`)
  for (const { place, pinned, onShelf } of difference.values)
    print(`    ${place}: ${valueText(pinned)}, on the shelf ${valueText(onShelf)}`)
}

const valueText = (value: ValueDifference['pinned']): string => (value === undefined ? 'none' : JSON.stringify(value))
