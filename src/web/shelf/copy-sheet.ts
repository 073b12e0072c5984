import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { withEach } from '../../core/hardware/sheet-paths.ts'
import { isCited } from '../../core/hardware/sheet-statements.ts'
import { shippedBaseOf } from '../../operations/newer-shipped.ts'
import { shelfFormEn } from '../messages/shelf-form-en.ts'
import { shelfFormEs } from '../messages/shelf-form-es.ts'

/**
 * The sheet of other hardware that begins as this one is. Nothing of it is confirmed: what was found in a document was said
 * of what it is copied from.
 */
export function copiedSheet(sheet: HardwareSheet, id: string, name: string): HardwareSheet {
  const bare = withEach(sheet, (value) => {
    if (!isCited(value)) return value
    const { checked: _, ...stated } = value
    return { ...stated, source: 'copied', confirmation: 'from memory' }
  })
  const { language = 'en' } = sheet
  const [own, other] = language === 'es' ? [shelfFormEs.copy, shelfFormEn.copy] : [shelfFormEn.copy, shelfFormEs.copy]
  const { [sheet.name]: _, [sheet.notice]: __, ...texts } = sheet.translations?.[language === 'es' ? 'en' : 'es'] ?? {}
  const edition = own.sourceEdition(sheet.id, sheet.version)
  const kept = new Set([...Object.values(sheet.sources)].flatMap((source) => [source.title, source.edition]))
  const others = Object.fromEntries(Object.entries(texts).filter(([text]) => !kept.has(text)))
  return {
    ...bare,
    basedOn: shippedBaseOf(sheet) ?? undefined,
    ...{ id, name, version: '1', notice: own.notice, sources: { copied: { title: own.source, edition } } },
    translations: {
      [language === 'es' ? 'en' : 'es']: {
        ...others,
        [own.notice]: other.notice,
        [own.source]: other.source,
        [edition]: other.sourceEdition(sheet.id, sheet.version),
      },
    },
  }
}

/** An id that a file can have, made of a name; with a number behind it where it is taken. */
export function idFor(name: string, taken: readonly string[]): string {
  const plain = name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
  const id = plain === '' ? 'sheet' : plain
  for (let n = 1; ; n += 1) {
    const one = n === 1 ? id : `${id}-${n}`
    if (!taken.includes(one)) return one
  }
}
