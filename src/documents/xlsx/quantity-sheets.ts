import { metresFromGround } from '../../core/units/ground-unit.ts'
import type { Print } from '../../words/print.ts'
import type { QuantitiesContents } from '../quantities-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { type Cell, cellName, column, type Sheet } from './sheet.ts'

/** Each total as the sum of its pieces, and what is paid. */
export function quantitiesSheet(
  { sections, paidFeet, boundaries, rounding, roundingText }: QuantitiesContents,
  print: Print,
): Sheet {
  const { quantities: words, total } = documentWords(print).workbook
  const [lengthUnit, perFoot] =
    print.units === 'metric' ? (['m', metresFromGround(1, 'foot')] as const) : (['ft', 1] as const)
  const rows: Cell[][] = []
  for (const { title, lines } of sections) {
    for (const line of lines) {
      const from = rows.length
      const [unit, size] = line.unit === 'each' ? [words.each, 1] : [lengthUnit, perFoot]
      for (const { what, amount } of line.pieces) rows.push([title, line.name, what, amount * size, unit, null, null])
      const sum =
        line.pieces.length === 0
          ? 0
          : { formula: `SUM(${cellName(3, from)}:${cellName(3, rows.length - 1)})`, result: line.amount * size }
      rows.push([title, line.name, total, sum, unit, line.note, line.source])
      if (line.id === 'length/run') {
        const length = cellName(3, rows.length - 1)
        const feet = size === 1 ? length : `${length}/${size}`
        const paidFor = {
          '0.1 ft': `ROUND(${feet}*10,0)/10`,
          '1 ft': `ROUND(${feet},0)`,
          '12.5 ft': `ROUND(${feet}/12.5,0)*12.5`,
        }[rounding]
        const paid = size === 1 ? paidFor : `${paidFor}*${size}`
        const rule = `${boundaries} ${roundingText}`
        rows.push([title, line.name, words.paid, { formula: paid, result: paidFeet * size }, unit, rule, null])
      }
    }
  }
  return {
    name: words.name,
    page: 'landscape',
    columns: [
      column(words.part, 16),
      column(words.item, 44),
      column(words.piece, 24),
      column(words.amount, 12),
      column(words.unit, 8),
      column(words.note, 44),
      column(words.source, 36),
    ],
    rows,
  }
}

/** What is delivered, with room for the marks on it. */
export function materialsSheet({ materials }: QuantitiesContents, print: Print): Sheet {
  const words = documentWords(print).workbook.materials
  const box = (line: (typeof materials)[number], mark: 'heat' | 'coating' | 'bundle'): string | null =>
    line.marks.includes(mark) ? null : words.notNeeded
  return {
    name: words.name,
    page: 'landscape',
    columns: [
      column(words.item, 44),
      column(words.count, 8),
      column(words.where, 32),
      column(words.heat, 20),
      column(words.coating, 20),
      column(words.bundle, 20),
    ],
    rows: materials.map((line) => [
      line.item,
      line.count,
      line.where,
      box(line, 'heat'),
      box(line, 'coating'),
      box(line, 'bundle'),
    ]),
  }
}
