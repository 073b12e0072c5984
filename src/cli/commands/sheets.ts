import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { readSheet } from '../../formats/sheet/sheet-file.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { badWords, type CommandOptions, type ExitCode, type Run } from '../command.ts'
import { print, printJson, readText, soundValue, words } from '../io.ts'

export const sheets: Run = async (args, options) => {
  const [what = 'list', ...rest] = args
  if (what === 'list' && rest.length === 0) return list(options)
  if (what === 'show' && rest.length === 1) return show(rest[0]!)
  if (what === 'validate' && rest.length > 0) return validate(rest, options)
  throw badWords('sheets list, sheets show ID or sheets validate FILE …', args.join(' '))
}

function list({ json }: CommandOptions): ExitCode {
  if (json) printJson({ sheets: shippedSheets.map(summaryOf) })
  else
    for (const sheet of shippedSheets)
      print(
        `${sheet.id.padEnd(28)} ${sheet.version}  ${sheet.kind.padEnd(16)} ${words.say(nameOf(sheet))}; rail ${words.say(limitsOf(sheet.railHeight))}`,
      )
  return 0
}

const summaryOf = ({ id, version, kind, name, notice, criteria, category }: HardwareSheet) => ({
  id,
  version,
  kind,
  name,
  notice,
  criteria,
  category,
})

function show(id: string): ExitCode {
  const sheet = shippedSheets.find((one) => one.id === id)
  if (sheet === undefined)
    throw badWords(`a sheet's id: ${shippedSheets.map((one) => one.id).join(', ')}`, JSON.stringify(id))
  printJson(sheet)
  return 0
}

async function validate(files: readonly string[], { json }: CommandOptions): Promise<ExitCode> {
  const sheets: HardwareSheet[] = []
  for (const file of files) sheets.push(soundValue(readSheet(file, await readText(file))))
  if (json) printJson({ valid: sheets.map(summaryOf) })
  else
    for (const [i, sheet] of sheets.entries())
      print(`${files[i]}: a sound sheet, ${sheet.id} ${sheet.version}, ${lengthOf(sheet)}`)
  return 0
}

const lengthOf = (sheet: HardwareSheet): string =>
  sheet.kind === 'longitudinal'
    ? `splices ${sheet.splice.position === 'post' ? 'at posts' : 'midway between posts'}`
    : `${words.feetInches(sheet.listedLength.inches)} long`
