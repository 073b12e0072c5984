import type { EndSheet, HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { type Contradiction, repeated } from '../contradiction.ts'
import type { LayoutShape } from './layout-shape.ts'
import type { RunShape } from './run-shape.ts'

/** What a run file says of its version that does not hold together: with its sheets, and within the layout. */
export function contradictionsInVersion(run: RunShape): readonly Contradiction[] {
  const { format, layout, version, earlier } = run
  if (format === 'lapwise-run/1') {
    return (['version', 'earlier', 'layout'] as const)
      .filter((field) => run[field] !== undefined)
      .map((field) => ({ path: [field], expected: { kind: 'nothing where asked', format } }))
  }
  const missing = (['version', 'earlier', 'layout'] as const).filter((field) => run[field] === undefined)
  if (layout === undefined || version === undefined || earlier === undefined)
    return missing.map((field) => ({ path: [field], expected: { kind: 'field of format', field, format } }))
  const sheets = inSheets(run)
  if (sheets.length > 0) return sheets
  return [
    ...inIds(layout, run),
    ...inPosts(layout),
    ...inPanels(layout),
    ...(['first', 'second'] as const).flatMap((unit) => inUnit(layout, run, unit)),
  ]
}

const sheetNamed = ({ sheets }: RunShape, id: string): HardwareSheet | undefined => sheets.find((one) => one.id === id)

/** A pinned run has every sheet in use, and no other. */
function inSheets(run: RunShape): Contradiction[] {
  const ends = (['first', 'second'] as const).flatMap((unit) => {
    const end = run[unit]
    return 'sheet' in end ? [{ path: [unit, 'sheet'], id: end.sheet, isSystem: false }] : []
  })
  const used = [{ path: ['system'], id: run.system, isSystem: true }, ...ends]
  const found: Contradiction[] = used.flatMap(({ path, id, isSystem }) => {
    const sheet = sheetNamed(run, id)
    return sheet !== undefined && (sheet.kind === 'longitudinal') === isSystem
      ? []
      : [{ path, expected: { kind: isSystem ? "id of a system's sheet" : "id of an end's sheet" } }]
  })
  const ids = new Set(used.map(({ id }) => id))
  return [
    ...found,
    ...run.sheets.flatMap(({ id }, i) =>
      ids.has(id) ? [] : [{ path: ['sheets', i], expected: { kind: 'sheet in use' } as const }],
    ),
  ]
}

/** Ids name one thing each, for ever. */
function inIds(layout: LayoutShape, { version, earlier = [] }: RunShape): Contradiction[] {
  const here: [string, Contradiction['path']][] = [
    ...(['posts', 'panels', 'splices'] as const).flatMap((list) =>
      layout[list].map(({ id }, i): [string, Contradiction['path']] => [id, ['layout', list, i, 'id']]),
    ),
    ...layout.spaces.map((id, i): [string, Contradiction['path']] => [id, ['layout', 'spaces', i]]),
    [layout.firstEnd, ['layout', 'firstEnd']],
    [layout.secondEnd, ['layout', 'secondEnd']],
  ]
  const gone = new Set(earlier.flatMap((one) => one.gone))
  return [
    ...repeated(here),
    ...here.flatMap(([id, path]) =>
      gone.has(id) ? [{ path, expected: { kind: 'id of no gone place' } as const }] : [],
    ),
    ...repeated([
      ...earlier.map(({ id }, i): [string, Contradiction['path']] => [id, ['earlier', i, 'id']]),
      [version!, ['version']],
    ]),
  ]
}

const ranks = { first: 0, run: 1, second: 2 } as const

function inPosts({ posts, spaces, omitted, asCounted }: LayoutShape): Contradiction[] {
  const found: Contradiction[] = []
  if (posts[0]!.along !== 0)
    found.push({ path: ['layout', 'posts', 0, 'along'], expected: { kind: 'origin of layout' } })
  for (const [i, post] of posts.entries()) {
    const before = posts[i - 1]
    if (before === undefined) continue
    if (post.along <= before.along)
      found.push({
        path: ['layout', 'posts', i, 'along'],
        expected: { kind: 'beyond post in layout', inches: before.along },
      })
    // A post too many among those of an end is one of the run.
    if (asCounted === undefined && ranks[post.unit] < ranks[before.unit])
      found.push({ path: ['layout', 'posts', i, 'unit'], expected: { kind: 'nothing before', unit: before.unit } })
  }
  if (spaces.length !== posts.length - 1)
    found.push({ path: ['layout', 'spaces'], expected: { kind: 'one between posts', count: posts.length - 1 } })
  const standing = new Set(posts.map(({ along }) => along))
  return [
    ...found,
    ...omitted.flatMap(({ along }, i) =>
      standing.has(along)
        ? [{ path: ['layout', 'omitted', i, 'along'], expected: { kind: 'place of no post' } as const }]
        : [],
    ),
  ]
}

function inPanels({ posts, panels, splices }: LayoutShape): Contradiction[] {
  const standing = new Set(posts.map(({ along }) => along))
  const found: Contradiction[] = panels.flatMap(({ from, to, unit }, i) => {
    const before = panels[i - 1]
    const at = (field: string): Contradiction['path'] => ['layout', 'panels', i, field]
    return [
      ...(to > from ? [] : [{ path: at('to'), expected: { kind: 'beyond start', inches: from } as const }]),
      ...(before === undefined || from === before.to
        ? []
        : [{ path: at('from'), expected: { kind: 'end of panel before', inches: before.to } as const }]),
      ...(before === undefined || ranks[unit] >= ranks[before.unit]
        ? []
        : [{ path: at('unit'), expected: { kind: 'nothing before', unit: before.unit } as const }]),
    ]
  })
  if (splices.length !== panels.length - 1)
    found.push({
      path: ['layout', 'splices'],
      expected: { kind: 'one between panels', count: panels.length - 1 },
    })
  for (const [i, { at, position }] of splices.entries()) {
    const panel = panels[i]
    if (panel !== undefined && at !== panel.to)
      found.push({
        path: ['layout', 'splices', i, 'at'],
        expected: { kind: 'end of panel at splice', inches: panel.to },
      })
    if (standing.has(at) && position !== 'post')
      found.push({ path: ['layout', 'splices', i, 'position'], expected: { kind: 'splice at post' } })
  }
  return found
}

/** The pieces of an end unit are those of its sheet. */
function inUnit(layout: LayoutShape, run: RunShape, unit: 'first' | 'second'): Contradiction[] {
  const end = run[unit]
  const posts = layout.posts.flatMap((post, i) => (post.unit === unit ? [{ ...post, i }] : []))
  if (!('sheet' in end))
    return posts.flatMap(({ state, i }) =>
      state === 'standing'
        ? []
        : [{ path: ['layout', 'posts', i, 'state'], expected: { kind: 'standing post' } as const }],
    )
  const sheet = sheetNamed(run, end.sheet) as EndSheet
  const found: Contradiction[] = []
  if (layout.asCounted === undefined && posts.length !== sheet.posts.length)
    found.push({
      path: ['layout', 'posts'],
      expected: { kind: 'posts of end', posts: sheet.posts.length, end: unit },
    })
  for (const { i, kind, block, ownNumber } of posts) {
    const own = sheet.posts.find(({ number }) => number === ownNumber)
    if (own === undefined)
      found.push({ path: ['layout', 'posts', i, 'ownNumber'], expected: { kind: 'post of sheet', sheet: sheet.id } })
    else {
      if (kind !== own.kind)
        found.push({
          path: ['layout', 'posts', i, 'kind'],
          expected: { kind: 'this value', value: JSON.stringify(own.kind) },
        })
      if (block !== own.block)
        found.push({ path: ['layout', 'posts', i, 'block'], expected: { kind: 'this value', value: `${own.block}` } })
    }
  }
  for (const [i, panel] of layout.panels.entries()) {
    if (panel.unit !== unit || panel.role !== 'own' || layout.asCounted !== undefined) continue
    if (sheet.panels.own[(panel.ownNumber ?? 0) - 1]?.inches !== panel.to - panel.from)
      found.push({
        path: ['layout', 'panels', i, 'ownNumber'],
        expected: { kind: 'panel of sheet', sheet: sheet.id },
      })
  }
  return found
}
