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
      .map((field) => ({ path: [field], expected: `nothing in ${format}, which only asks` }))
  }
  const missing = (['version', 'earlier', 'layout'] as const).filter((field) => run[field] === undefined)
  if (layout === undefined || version === undefined || earlier === undefined)
    return missing.map((field) => ({ path: [field], expected: `"${field}" in ${format}` }))
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
      : [{ path, expected: `the id of ${isSystem ? "a system's sheet" : "an end's sheet"} in "sheets"` }]
  })
  const ids = new Set(used.map(({ id }) => id))
  return [
    ...found,
    ...run.sheets.flatMap(({ id }, i) => (ids.has(id) ? [] : [{ path: ['sheets', i], expected: 'a sheet in use' }])),
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
    ...here.flatMap(([id, path]) => (gone.has(id) ? [{ path, expected: 'an id of no place that is gone' }] : [])),
    ...repeated([
      ...earlier.map(({ id }, i): [string, Contradiction['path']] => [id, ['earlier', i, 'id']]),
      [version!, ['version']],
    ]),
  ]
}

const ranks = { first: 0, run: 1, second: 2 } as const

function inPosts({ posts, spaces, omitted }: LayoutShape): Contradiction[] {
  const found: Contradiction[] = []
  if (posts[0]!.along !== 0) found.push({ path: ['layout', 'posts', 0, 'along'], expected: '0, as of post 1' })
  for (const [i, post] of posts.entries()) {
    const before = posts[i - 1]
    if (before === undefined) continue
    if (post.along <= before.along)
      found.push({
        path: ['layout', 'posts', i, 'along'],
        expected: `more than ${before.along} in, where the post before stands`,
      })
    if (ranks[post.unit] < ranks[before.unit])
      found.push({ path: ['layout', 'posts', i, 'unit'], expected: `nothing before ${JSON.stringify(before.unit)}` })
  }
  if (spaces.length !== posts.length - 1)
    found.push({ path: ['layout', 'spaces'], expected: `${posts.length - 1} in the list, one between each two posts` })
  const standing = new Set(posts.map(({ along }) => along))
  return [
    ...found,
    ...omitted.flatMap(({ along }, i) =>
      standing.has(along)
        ? [{ path: ['layout', 'omitted', i, 'along'], expected: 'a place where no post stands' }]
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
      ...(to > from ? [] : [{ path: at('to'), expected: `more than ${from} in, where it begins` }]),
      ...(before === undefined || from === before.to
        ? []
        : [{ path: at('from'), expected: `${before.to} in, where the panel before ends` }]),
      ...(before === undefined || ranks[unit] >= ranks[before.unit]
        ? []
        : [{ path: at('unit'), expected: `nothing before ${JSON.stringify(before.unit)}` }]),
    ]
  })
  if (splices.length !== panels.length - 1)
    found.push({
      path: ['layout', 'splices'],
      expected: `${panels.length - 1} in the list, one between each two panels`,
    })
  for (const [i, { at, position }] of splices.entries()) {
    const panel = panels[i]
    if (panel !== undefined && at !== panel.to)
      found.push({ path: ['layout', 'splices', i, 'at'], expected: `${panel.to} in, where the panel before it ends` })
    if (standing.has(at) && position !== 'post')
      found.push({ path: ['layout', 'splices', i, 'position'], expected: '"post", as one stands there' })
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
        : [{ path: ['layout', 'posts', i, 'state'], expected: '"standing", as the run goes on' }],
    )
  const sheet = sheetNamed(run, end.sheet) as EndSheet
  const found: Contradiction[] = []
  if (posts.length !== sheet.posts.length)
    found.push({
      path: ['layout', 'posts'],
      expected: `${sheet.posts.length} posts of the ${unit} end, as its sheet has`,
    })
  for (const { i, kind, block, ownNumber } of posts) {
    const own = sheet.posts.find(({ number }) => number === ownNumber)
    if (own === undefined)
      found.push({ path: ['layout', 'posts', i, 'ownNumber'], expected: `the number of a post of ${sheet.id}` })
    else {
      if (kind !== own.kind) found.push({ path: ['layout', 'posts', i, 'kind'], expected: JSON.stringify(own.kind) })
      if (block !== own.block) found.push({ path: ['layout', 'posts', i, 'block'], expected: `${own.block}` })
    }
  }
  for (const [i, panel] of layout.panels.entries()) {
    if (panel.unit !== unit || panel.role !== 'own') continue
    if (sheet.panels.own[(panel.ownNumber ?? 0) - 1]?.inches !== panel.to - panel.from)
      found.push({
        path: ['layout', 'panels', i, 'ownNumber'],
        expected: `the number of a panel of ${sheet.id} of this length`,
      })
  }
  return found
}
