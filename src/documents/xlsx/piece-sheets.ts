import { panelKind } from '../../core/quantities/count-panels.ts'
import { exactLength, lengthIn } from '../../core/units/exact-length.ts'
import type { Print } from '../../words/print.ts'
import { postKind } from '../post-kind.ts'
import type { RecordInput } from '../record-input.ts'
import type { StakeListContents } from '../stake-list-contents.ts'
import { documentWords } from '../words/document-words.ts'
import { type Cell, cellName, column, type Sheet } from './sheet.ts'

/** Posts, panels and stakes of the layout, a row for each. */
export function postsSheet({ model, print }: RecordInput): Sheet {
  const { workbook, asBuilt } = documentWords(print)
  const words = workbook.posts
  const inches = column(words.along('in'), 14)
  const along =
    print.units === 'metric' ? [column(words.along('m'), 14, 4), inches] : [inches, column(words.along('ft'), 14)]
  return {
    name: words.name,
    page: 'portrait',
    columns: [
      column(words.post, 8),
      ...along,
      column(words.kind, 28),
      column(words.block, 8),
      column(words.part, 12),
      column(words.ownNumber, 12),
      column(words.state, 12),
    ],
    rows: model.layout.posts.map((post, row) => [
      post.number,
      ...(print.units === 'metric'
        ? [metresOf(post.alongInches), post.alongInches]
        : [post.alongInches, { formula: `${cellName(1, row)}/12`, result: post.alongInches / 12 }]),
      postKind(post, model, print),
      post.block ? asBuilt.yes : asBuilt.no,
      workbook.parts[post.unit],
      post.ownNumber,
      words.states[post.state],
    ]),
  }
}

export function panelsSheet({ model, print }: RecordInput): Sheet {
  const { workbook, asBuilt } = documentWords(print)
  const words = workbook.panels
  const { panels } = model.layout
  const units = print.units === 'metric' ? (['m', 'in'] as const) : (['in'] as const)
  const inUnits = (inches: readonly number[]): number[] =>
    units.flatMap((unit) => (unit === 'in' ? inches : inches.map(metresOf)))
  const rows: Cell[][] = panels.map((panel) => {
    const { name, gauge, layers } = panelKind(panel, model)
    const { number, inches, fromInches, toInches, unit, role } = panel
    return [
      number,
      ...inUnits([inches, fromInches, toInches]),
      print.say({ kind: 'panel as named', of: name }),
      print.say({ kind: 'gauge of panel', gauge }),
      layers,
      workbook.parts[unit],
      asBuilt.roles[role],
    ]
  })
  const sums = inUnits([panels.reduce((sum, { inches }) => sum + inches, 0)]).flatMap((result, i): Cell[] => {
    const at = 1 + i * 3
    return [{ formula: `SUM(${cellName(at, 0)}:${cellName(at, panels.length - 1)})`, result }, null, null]
  })
  return {
    name: words.name,
    page: 'portrait',
    columns: [
      column(words.panel, 8),
      ...units.flatMap((unit) =>
        [words.length, words.from, words.to].map((head) => column(head(unit), 12, unit === 'm' ? 4 : null)),
      ),
      column(words.kind, 28),
      column(words.gauge, 12),
      column(words.layers, 8),
      column(words.part, 12),
      column(words.role, 12),
    ],
    rows: [...rows, [workbook.total, ...sums, null, null, null, null, null]],
  }
}

const metresOf = (inches: number): number => lengthIn(exactLength(inches, 'in'), 'm')

export function stakesSheet({ stakes, unit: groundUnit, closure, notes }: StakeListContents, print: Print): Sheet {
  const { stakes: words, groundUnits } = documentWords(print).workbook
  const unit = groundUnits[groundUnit]
  const rows = stakes.map((stake): Cell[] => [
    stake.point,
    stake.northing,
    stake.easting,
    stake.elevation,
    stake.code,
    stake.station,
    stake.offset,
    stake.along,
    stake.railFromLast,
    stake.chordFromLast,
    stake.purpose,
  ])
  const blank = Array.from({ length: 10 }, () => null)
  return {
    name: words.name,
    page: 'landscape',
    columns: [
      column(words.point, 8),
      column(words.northing(unit), 18, 4),
      column(words.easting(unit), 18, 4),
      column(words.elevation(unit), 14, 4),
      column(words.code, 16),
      column(words.station, 16),
      column(words.offset(unit), 16, 4),
      column(words.along, 16),
      column(words.railFromLast, 16),
      column(words.chordFromLast(unit), 16, 4),
      column(words.purpose, 48),
    ],
    rows: [...rows, ...[closure, ...notes].map((note): Cell[] => [...blank, note])],
  }
}
