// One sheet of paper for the pocket has every check of a hardware sheet; one for two sheets has what differs, with both figures.
import { describe, expect, test } from 'vitest'
import type { HardwareSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { systemOf } from '../../../src/operations/sheet-requirements.ts'
import { comparisonCard, pocketCard } from '../../../src/operations/write-sheet-cards.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { leftUnsaid, unsaidIn } from '../../pseudo/find-unsaid.ts'
import { pseudo } from '../../pseudo/pseudo.ts'
import { fileOf, isInstalled, outputOf, qpdfCheck, textOf } from './outside-programs.ts'

const named = (id: string): HardwareSheet => shippedSheets.find((sheet) => sheet.id === id)!
const at = (sheet: HardwareSheet) => ({ sheet, system: systemOf(sheet, shippedSheets)! })
const printing = { page: 'letter', printedAt: '2026-11-28T09:00:00Z', author: '', print: english(null) } as const

async function card(sheet: HardwareSheet, changes: object = {}): Promise<string> {
  return fileOf(await pocketCard(sheet, at(sheet).system, { ...printing, isChanged: false, ...changes }), 'card.pdf')
}
const comparison = async (one: string, other: string, changes: object = {}): Promise<string> =>
  fileOf(await comparisonCard(at(named(one)), at(named(other)), { ...printing, ...changes }), 'comparison.pdf')

const pagesOf = (path: string): number => Number(/^Pages: +(\d+)$/m.exec(outputOf('pdfinfo', path))?.[1])

/** What the rules of a sheet ask for, as its file has them, in one of its languages; a unit of one panel has no splice of its own. */
function rulesIn(sheet: HardwareSheet, language: 'en' | 'es'): readonly string[] {
  const hasSplices = sheet.kind === 'longitudinal' || sheet.panels.own.length > 1
  const rules = sheet.parts.flatMap((part) => part.rules).filter(({ at }) => hasSplices || at.kind !== 'each splice')
  const musts = rules.map(({ must }) => must)
  return musts.map((must) => (language === 'en' ? must : sheet.translations!.es![must]!).replace(/[{}]/g, ''))
}

const canCheck = isInstalled('qpdf') && isInstalled('pdftotext') && isInstalled('pdfinfo')

describe.skipIf(!canCheck)('the pocket card', { timeout: 60_000 }, () => {
  test.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))(
    'of %s is one sheet of paper with every rule of it, in both languages, on both papers',
    async (_, sheet) => {
      for (const [language, print, page] of [
        ['en', english(null), 'letter'],
        ['es', spanish(null), 'A4'],
      ] as const) {
        const path = await card(sheet, { print, page })
        expect(qpdfCheck(path)).toBe(0)
        expect(pagesOf(path)).toBeLessThanOrEqual(2)
        const text = textOf(path)
        expect(rulesIn(sheet, language).filter((must) => !text.includes(must))).toEqual([])
      }
    },
  )

  test('says what is covered first, then post by post, with what is wrong beside what is right', async () => {
    const text = textOf(await card(named('flared-terminal-31')))
    const places = [
      'Before it is covered',
      'The lower post was seen in place',
      'In walking order',
      'The top of the rail stands 30 in to 32 in, 31 in nominal above finish grade.',
      'Right. 30 in to 32 in, 31 in nominal',
      'Wrong: less than 30 in, or more than 32 in',
      'The hinge bolt is on the side away from the head.',
      'The last panel before the run is 9 ft 4 1/2 in long',
    ].map((words) => text.indexOf(words))
    expect(places).not.toContain(-1)
    expect(places).toEqual(places.toSorted((a, b) => a - b))
  })

  test('asks of a panel that the layout chooses for one of its lengths, and for no other check twice', async () => {
    const text = textOf(await card(named('flared-terminal-31')))
    expect(text.match(/One of these, as the layout says:/g)).toHaveLength(1)
    expect(text).toMatch(/One of these.*9 ft 4 1\/2 in long.*15 ft 7 1\/2 in long/)
    expect(text.match(/The post carries no offset block\./g)).toHaveLength(1)
  })

  test('says lengths in the units asked for, with the published ones behind', async () => {
    const path = await card(named('flared-terminal-31'), { print: spanish('metric') })
    // The longest of all.
    expect(pagesOf(path)).toBe(2)
    expect(textOf(path)).toContain('762 mm (30 in) a 812.8 mm (32 in)')
  })

  test('marks a text that nobody translated, and leaves nothing unsaid', async () => {
    const own = JSON.parse(JSON.stringify(named('flared-terminal-31'))) as HardwareSheet
    const [part] = own.parts
    const [first] = part!.rules
    const changed = { ...own, parts: [{ ...part!, rules: [{ ...first!, must: 'A text of an agency.' }] }] }
    expect(textOf(await card(changed, { print: spanish(null) }))).toContain('A text of an agency. (en)')
    const left = unsaidIn(textOf(await card(named('flared-terminal-31'), { print: pseudo(null) })))
    expect(leftUnsaid('pocket card', left)).toEqual([])
  })
})

describe.skipIf(!canCheck)('the comparison card', { timeout: 60_000 }, () => {
  test('of the flared terminals has both figures of each item and why it matters, on one sheet of paper', async () => {
    const path = await comparison('flared-terminal-27-3-4', 'flared-terminal-31')
    expect(qpdfCheck(path)).toBe(0)
    expect(pagesOf(path)).toBeLessThanOrEqual(2)
    const text = textOf(path)
    // As the two files have them.
    expect(text).toMatch(/Rail height .*27 3\/4 in to 30 in .*30 in to 32 in, 31 in nominal/)
    expect(text).toContain('Too low, a vehicle goes over the rail; too high, it goes under or snags.')
    expect(text).toMatch(/in the lower hole set\. .*in the upper hole set\./)
    expect(text).toMatch(/open lower slots .*open upper slots/)
    expect(text).toMatch(/Adapter panel 1 .*9 ft 4 1\/2 in/)
    // What both ask for alike is not on it.
    expect(text).not.toContain('The anchor cable is taut')
    expect(text).not.toContain('The hinge bolt is on the side toward the head.')
  })

  test('of one sheet with itself says so, and of two without a system says what they state', async () => {
    expect(textOf(await comparison('flared-terminal-31', 'flared-terminal-31'))).toContain('Both state the same.')
    const alone = (id: string) => ({ sheet: named(id), system: null })
    const pdf = await comparisonCard(alone('flared-terminal-27-3-4'), alone('flared-terminal-31'), printing)
    const text = textOf(fileOf(pdf, 'alone.pdf'))
    expect(text).toContain('30 in to 32 in, 31 in nominal')
    expect(text).not.toContain('Too low')
  })

  test('is said in Spanish, and leaves nothing unsaid', async () => {
    const text = textOf(await comparison('trailing-anchor-27-3-4', 'trailing-anchor-31', { print: spanish(null) }))
    expect(text).toContain('Lo que difiere')
    expect(text).toContain('Por qué importa:')
    expect(text).not.toContain('Why it matters')
    const left = unsaidIn(
      textOf(await comparison('flared-terminal-27-3-4', 'flared-terminal-31', { print: pseudo(null) })),
    )
    expect(leftUnsaid('comparison card', left)).toEqual([])
  })
})
