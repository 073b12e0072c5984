import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'

/** Every text of the sheet that is shown to a person; of sources what is not the title of a document may have other languages. */
export const translatable = (sheet: HardwareSheet): readonly string[] => [
  ...textsOf(sheet),
  ...Object.values(sheet.sources).flatMap(({ title, edition }) => [title, edition]),
]

/** The same without its sources, which keep the titles under which they are published. */
export function textsOf(sheet: HardwareSheet): readonly string[] {
  const parts = sheet.parts.flatMap(({ name, rules }) => [name, ...rules.flatMap(textsOfRule)])
  return [sheet.name, sheet.notice, ...parts, ...measuredIn(sheet), ...piecesOf(sheet)]
}

function textsOfRule({ must, look, how, why, remedy }: HardwareSheet['parts'][number]['rules'][number]): string[] {
  const labels = look.kind === 'choose' ? look.choices.map(({ label }) => label) : []
  return [must, how, why, remedy, ...labels]
}

/** How each of its dimensions is measured, wherever it stands. */
function measuredIn(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return []
  const own = 'role' in value && 'measured' in value ? [String(value.measured)] : []
  return [...own, ...Object.values(value).flatMap(measuredIn)]
}

/** What its posts and panels are called. */
function piecesOf(sheet: HardwareSheet): string[] {
  if (sheet.kind === 'longitudinal')
    return [sheet.post.kind, ...sheet.omissions.flatMap(({ specialPostKind }) => specialPostKind ?? [])]
  const panels = [...sheet.panels.own, ...sheet.panels.adapters]
  return [...sheet.posts.map(({ kind }) => kind), ...panels.map(({ name }) => name)]
}
