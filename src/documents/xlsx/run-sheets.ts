import { lacksSide } from '../../core/measurement/offset-side.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { panelKind } from '../../core/quantities/count-panels.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { valueIn } from '../../core/units/quantity-kinds.ts'
import { standingOf } from '../../core/verdicts/free-findings.ts'
import { remedyOf } from '../../core/verdicts/saying.ts'
import { setAsideIn } from '../../core/verdicts/set-aside.ts'
import type { Verdict } from '../../core/verdicts/verdict.ts'
import type { EntryOf, PhotoBody } from '../../formats/entry/entry-kinds.ts'
import type { Print } from '../../words/print.ts'
import { askedEarlierLines } from '../asked-earlier.ts'
import type { QuantitiesContents } from '../quantities-contents.ts'
import { readingLine } from '../reading-lines.ts'
import type { RecordInput } from '../record-input.ts'
import { requirementLines, sourceLines } from '../requirement-lines.ts'
import { runFacts, sheetLines } from '../run-facts.ts'
import type { StakeListContents } from '../stake-list-contents.ts'
import { type Cell, type Column, cellName, type Sheet } from './sheet.ts'

/**
 * Everything of a run as sheets of a workbook; stakes only where the run was placed on its road, what an earlier version
 * asked only where there is any.
 */
export function runSheets(
  input: RecordInput,
  stakes: StakeListContents | null,
  quantities: QuantitiesContents,
  photos: readonly EntryOf<PhotoBody>[],
): readonly Sheet[] {
  const earlier = askedEarlierSheet(input, photos)
  return [
    factsSheet(input),
    postsSheet(input),
    panelsSheet(input),
    ...(stakes === null ? [] : [stakesSheet(stakes)]),
    quantitiesSheet(quantities),
    materialsSheet(quantities),
    requirementsSheet(input),
    readingsSheet(input),
    ...(earlier.rows.length === 0 ? [] : [earlier]),
    findingsSheet(input),
  ]
}

const column = (header: string, width: number, decimals: number | null = null): Column => ({ header, width, decimals })

function factsSheet(input: RecordInput): Sheet {
  const rows: Cell[][] = [
    ['Run', input.run.name],
    ...runFacts(input).map(({ name, value }): Cell[] => [name, value]),
    ...sheetLines(input).map(({ role, name, id, version, criteria }): Cell[] => [
      role,
      [name, id === '' ? '' : `sheet ${id} ${version}`, criteria].filter((text) => text !== '').join('; '),
    ]),
    ['Acceptance', input.print.say(input.judgement.acceptance)],
    ...setAsideIn(input.judgement.verdicts).map(({ requirement, by, because }): Cell[] => [
      'Set aside',
      `${requirement}, by ${by}: ${because}`,
    ]),
  ]
  return { name: 'Run', page: 'portrait', columns: [column('Fact', 28), column('Value', 70)], rows }
}

function postsSheet({ model: { layout }, print }: RecordInput): Sheet {
  return {
    name: 'Posts',
    page: 'portrait',
    columns: [
      column('Post', 8),
      column('Along the rail (in)', 14),
      column('Along the rail (ft)', 14),
      column('Kind', 28),
      column('Block', 8),
      column('Part of', 12),
      column('Its number there', 12),
      column('State', 12),
    ],
    rows: layout.posts.map(({ number, alongInches, kind, block, unit, ownNumber, state }, row) => [
      number,
      alongInches,
      { formula: `${cellName(1, row)}/12`, result: alongInches / 12 },
      print.say(kind),
      block ? 'yes' : 'no',
      unit === 'run' ? 'run' : `${unit} end`,
      ownNumber,
      state,
    ]),
  }
}

function panelsSheet({ model, print }: RecordInput): Sheet {
  const { panels } = model.layout
  const rows: Cell[][] = panels.map((panel) => {
    const { name, gauge, layers } = panelKind(panel, model)
    const { number, inches, fromInches, toInches, unit, role } = panel
    const part = unit === 'run' ? 'run' : `${unit} end`
    return [
      number,
      inches,
      fromInches,
      toInches,
      print.say({ kind: 'panel as named', of: name }),
      print.say({ kind: 'gauge of panel', gauge }),
      layers,
      part,
      role,
    ]
  })
  const total = panels.reduce((sum, { inches }) => sum + inches, 0)
  const sum = { formula: `SUM(${cellName(1, 0)}:${cellName(1, panels.length - 1)})`, result: total }
  return {
    name: 'Panels',
    page: 'portrait',
    columns: [
      column('Panel', 8),
      column('Length (in)', 12),
      column('From (in)', 12),
      column('To (in)', 12),
      column('Name', 28),
      column('Gauge', 12),
      column('Layers', 8),
      column('Part of', 12),
      column('Role', 12),
    ],
    rows: [...rows, ['Total', sum, null, null, null, null, null, null, null]],
  }
}

function stakesSheet({ stakes, unit, closure, notes }: StakeListContents): Sheet {
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
    name: 'Stakes',
    page: 'landscape',
    columns: [
      column('Point', 8),
      column(`Northing (${unit})`, 18, 4),
      column(`Easting (${unit})`, 18, 4),
      column(`Elevation (${unit})`, 14, 4),
      column('Code', 16),
      column('Station', 16),
      column(`Offset, right positive (${unit})`, 16, 4),
      column('Along the rail', 16),
      column('Rail from last', 16),
      column(`Chord from last (${unit})`, 16, 4),
      column('Purpose', 48),
    ],
    rows: [...rows, ...[closure, ...notes].map((note): Cell[] => [...blank, note])],
  }
}

function quantitiesSheet({ sections, paidFeet, boundaries, rounding, roundingText }: QuantitiesContents): Sheet {
  const rows: Cell[][] = []
  for (const { title, lines } of sections) {
    for (const line of lines) {
      const from = rows.length
      for (const { what, amount } of line.pieces) rows.push([title, line.name, what, amount, line.unit, null, null])
      const sum =
        line.pieces.length === 0
          ? 0
          : { formula: `SUM(${cellName(3, from)}:${cellName(3, rows.length - 1)})`, result: line.amount }
      rows.push([title, line.name, 'Total', sum, line.unit, line.note, line.source])
      if (line.id === 'length/run') {
        const length = cellName(3, rows.length - 1)
        const paid = {
          '0.1 ft': `ROUND(${length}*10,0)/10`,
          '1 ft': `ROUND(${length},0)`,
          '12.5 ft': `ROUND(${length}/12.5,0)*12.5`,
        }[rounding]
        const rule = `${boundaries} ${roundingText}`
        rows.push([title, line.name, 'Paid', { formula: paid, result: paidFeet }, 'ft', rule, null])
      }
    }
  }
  return {
    name: 'Quantities',
    page: 'landscape',
    columns: [
      column('Part', 16),
      column('Item', 44),
      column('Piece', 24),
      column('Amount', 12),
      column('Unit', 8),
      column('Note', 44),
      column('Source', 36),
    ],
    rows,
  }
}

function materialsSheet({ materials }: QuantitiesContents): Sheet {
  const box = (line: (typeof materials)[number], mark: 'heat' | 'coating' | 'bundle'): string | null =>
    line.marks.includes(mark) ? null : 'not needed'
  return {
    name: 'Material',
    page: 'landscape',
    columns: [
      column('Item', 44),
      column('Count', 8),
      column('Where', 32),
      column('Heat mark', 20),
      column('Coating mark', 20),
      column('Mark of the bundle', 20),
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

function requirementsSheet(input: RecordInput): Sheet {
  const verdicts = new Map(input.judgement.verdicts.map((verdict) => [verdict.requirement, verdict]))
  const sources = sourceLines(input.requirements)
  return {
    name: 'Requirements',
    page: 'landscape',
    columns: [
      column('Number', 8),
      column('Requirement', 30),
      column('Place', 30),
      column('Must', 44),
      column('Limit', 30),
      column('Value, in the unit beside it', 12),
      column('Unit', 8),
      column('Margin, in the same unit', 12),
      column('Standard uncertainty, in the same unit', 14, 4),
      column('Verdict', 14),
      column('Reason', 44),
      column('Readings', 20),
      column('Sheet', 30),
      column('Source', 36),
      column('Confirmation', 16),
    ],
    rows: requirementLines(input, sources).map((line, i): Cell[] => {
      const [value, unit, margin, uncertainty] = measuredCells(verdicts.get(line.id))
      const { source } = input.requirements[i] as Requirement
      return [
        line.number,
        line.id,
        line.place.name,
        line.must,
        line.limit,
        value,
        unit,
        margin,
        uncertainty,
        line.verdict,
        line.reason,
        line.readings.map(({ id }) => id).join(', '),
        line.sheet,
        `${input.print.say(source.title)}, ${input.print.say(source.edition)}`,
        line.confirmation,
      ]
    }),
  }
}

function measuredCells(verdict: Verdict | undefined): readonly [Cell, Cell, Cell, Cell] {
  if (verdict?.because.kind !== 'measured') return [null, null, null, null]
  const { value, unit, margin, uncertainty } = verdict.because
  return [value, unit, margin, uncertainty]
}

function readingsSheet(input: RecordInput): Sheet {
  const byId = new Map(input.requirements.map((requirement) => [requirement.id, requirement]))
  return {
    name: 'Readings',
    page: 'landscape',
    columns: readingColumns,
    rows: input.readings.map((reading) => readingCells(reading, byId.get(reading.of), input)),
  }
}

const readingColumns: readonly Column[] = [
  column('Reading', 12),
  column('Of', 30),
  column('Answer', 24),
  column('Length, in the unit beside it', 14),
  column('Unit', 8),
  column('Side', 20),
  column('Instrument', 24),
  column('Uncertainty', 24),
  column('By', 20),
  column('At', 24),
  column('Where', 30),
  column('Note', 44),
  column('Photos', 30),
  column('Corrects', 12),
  column('Rechecks', 24),
  column('Without effect', 44),
]

function readingCells(reading: Reading, requirement: Requirement | undefined, input: RecordInput): readonly Cell[] {
  const line = readingLine(reading, requirement, input)
  const { answer } = reading
  return [
    line.id,
    line.of,
    line.answer,
    answer.kind === 'measured' ? valueIn(answer.value, answer.unit) : null,
    answer.kind === 'measured' ? answer.unit : null,
    sideOf(reading, input.print),
    line.instrument,
    line.uncertainty,
    line.by,
    line.at,
    line.where,
    line.note,
    line.photos.join(', '),
    line.corrects,
    line.rechecks,
    line.withoutEffect.join('; '),
  ]
}

/** What an earlier version asked and this one does not: readings first, then photos of it. */
function askedEarlierSheet(input: RecordInput, photos: readonly EntryOf<PhotoBody>[]): Sheet {
  const lines = askedEarlierLines(input, photos)
  return {
    name: 'Asked earlier',
    page: 'landscape',
    columns: [...readingColumns, column('Version', 38), column('Why it is not judged', 44)],
    rows: [
      ...input.askedEarlier.map(({ reading }, i) => {
        const { version, why } = lines.readings[i]!
        return [...readingCells(reading, undefined, input), version, why]
      }),
      ...lines.photos.map(({ photo, of, by, at, note, why }): Cell[] => [
        ...[null, of, null, null, null, null, null, null, by, at, null, note, photo, null, null, null, null, why],
      ]),
    ],
  }
}

function sideOf(reading: Reading, print: Print): string | null {
  if (lacksSide(reading)) return 'not stated'
  const { answer } = reading
  return answer.kind === 'measured' && answer.side !== undefined ? print.say({ kind: 'side', side: answer.side }) : null
}

function findingsSheet({ judgement, print }: RecordInput): Sheet {
  return {
    name: 'Findings',
    page: 'landscape',
    columns: [column('Place', 36), column('What', 44), column('Remedy', 60), column('Requirements', 40)],
    rows: [
      ...judgement.findings.map((finding): Cell[] => [
        print.say(finding.place),
        print.say(finding.what),
        print.say(remedyOf(finding)),
        finding.requirements.join(', '),
      ]),
      ...standingOf(judgement.freeFindings).map(({ finding, place, severity }): Cell[] => {
        const said = [print.say({ kind: 'seen', what: finding.what }), print.say({ kind: 'severity', severity })]
        const note = finding.note === null ? [] : [print.theirs(finding.note)]
        return [place === null ? null : print.say(place), [...said, ...note].join('; '), null, finding.id]
      }),
    ],
  }
}
