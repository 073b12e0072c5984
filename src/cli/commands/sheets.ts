import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { readSheet, sheetFromValue, writeSheet } from '../../formats/sheet/sheet-file.ts'
import { languagesBeside } from '../../formats/sheet/text-rows.ts'
import { takeTexts, writeTexts } from '../../formats/sheet/text-table.ts'
import { nextEdition } from '../../operations/next-edition.ts'
import { systemOf } from '../../operations/sheet-requirements.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { badWords, type CommandOptions, type ExitCode, type Run } from '../command.ts'
import { note, print, printJson, readText, shownName, soundValue, words, writeWhole } from '../io.ts'
import { paperOf, printingOf, wordsOf } from '../packet-rules.ts'
import { streams } from '../streams.ts'

export const sheets: Run = async (args, options) => {
  const [what = 'list', ...rest] = args
  if (what === 'list' && rest.length === 0) return list(options)
  if (what === 'show' && rest.length === 1) return show(rest[0]!)
  if (what === 'validate' && rest.length > 0) return validate(rest, options)
  if (what === 'texts' && rest.length === 1) return texts(rest[0]!, options)
  if (what === 'translate' && rest.length === 2 && options.output !== null)
    return translate(rest[0]!, rest[1]!, options.output, options)
  if (what === 'card' && (rest.length === 1 || rest.length === 2) && options.output !== null)
    return card(rest, options.output, options)
  if (what === 'compare' && rest.length === 2 && options.output !== null)
    return compare(rest[0]!, rest[1]!, options.output, options)
  const ways =
    'sheets list, show ID, validate FILE …, texts SHEET, translate SHEET TABLE -o NEXT, card SHEET -o CARD.pdf or compare SHEET OTHER -o CARD.pdf'
  throw badWords(ways, args.join(' '))
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

async function texts(file: string, { output }: CommandOptions): Promise<ExitCode> {
  const sheet = await loadSheet(file)
  const [to] = languagesBeside(sheet)
  const table = writeTexts(sheet, to!)
  if (output === null) streams().stdout.write(table)
  else await writeWhole(output, table)
  return 0
}

async function translate(file: string, table: string, output: string, { json }: CommandOptions): Promise<ExitCode> {
  const sheet = await loadSheet(file)
  const taken = soundValue(takeTexts(shownName(table), await readText(table), sheet))
  const { translated, changed, gone } = taken
  const next = soundValue(sheetFromValue(shownName(table), { ...taken.sheet, version: nextEdition(sheet) }))
  await writeWhole(output, writeSheet(next))
  if (json) printJson({ id: next.id, version: next.version, translated, changed, gone })
  else {
    print(`${output}: ${next.id} ${next.version}, ${translated} ${translated === 1 ? 'text' : 'texts'} translated`)
    if (changed.length > 0)
      print(`changed in the sheet since, kept as the earlier translation: rows ${changed.join(', ')}`)
    if (gone.length > 0) print(`no longer in the sheet: rows ${gone.join(', ')}`)
  }
  return 0
}

/** @param words  a sheet, and of an end unit that joins none of the shipped ones the sheet of the barrier that it is at */
async function card(words: readonly string[], output: string, options: CommandOptions): Promise<ExitCode> {
  const printing = printingFrom(options)
  const [sheet, beside] = await Promise.all(words.map(knownSheet))
  const system = systemOf(sheet!, [...(beside === undefined ? [] : [beside]), ...shippedSheets])
  if (system === undefined) throw badWords('sheets card SHEET BARRIER -o CARD.pdf', words.join(' '))
  const { pocketCard } = await import('../../operations/write-sheet-cards.ts')
  await writeWhole(output, await pocketCard(sheet!, system, { ...printing, isChanged: false }))
  note(`wrote ${output}`)
  return 0
}

async function compare(one: string, other: string, output: string, options: CommandOptions): Promise<ExitCode> {
  const printing = printingFrom(options)
  const sheets = await Promise.all([one, other].map(knownSheet))
  const [here, there] = sheets.map((sheet) => ({
    sheet,
    system: systemOf(sheet, [...sheets, ...shippedSheets]) ?? null,
  }))
  const { comparisonCard } = await import('../../operations/write-sheet-cards.ts')
  await writeWhole(output, await comparisonCard(here!, there!, printing))
  note(`wrote ${output}`)
  return 0
}

const printingFrom = (options: CommandOptions) => ({
  page: paperOf(options),
  ...printingOf(options),
  print: wordsOf(options, null),
})

/** A shipped sheet by its id, any other from its file. */
const knownSheet = async (word: string): Promise<HardwareSheet> =>
  shippedSheets.find(({ id }) => id === word) ?? loadSheet(word)

const loadSheet = async (file: string): Promise<HardwareSheet> =>
  soundValue(readSheet(shownName(file), await readText(file)))

async function validate(files: readonly string[], { json }: CommandOptions): Promise<ExitCode> {
  const sheets: HardwareSheet[] = []
  for (const file of files) sheets.push(await loadSheet(file))
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
