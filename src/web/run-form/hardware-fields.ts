import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import type { UnitView } from '../../drawing/views/unit-view.ts'
import type { Shelf } from '../../operations/sheet-shelf.ts'
import { unitPicture } from '../../operations/unit-picture.ts'
import { type Draft, itemsAt, textOf, valueAt, withValue } from '../form/draft.ts'
import type { Choice, FormField } from '../form/form-field.ts'
import { language } from '../language.ts'
import { printIn, say } from '../messages.ts'
import { railFieldMaker } from './rail-fields.ts'
import { words } from './words.ts'

/** The system and both ends, by the pictures of their sheets. */
export function hardwareFields(draft: Draft, shelf: Shelf): readonly FormField[] {
  const { fields } = words()
  const { field } = railFieldMaker(draft)
  const held = itemsAt(draft, 'sheets') as readonly HardwareSheet[]
  const sheets = [...new Map([...shelf, ...held.map((sheet) => [sheet.id, sheet] as const)]).values()]
  const systems = sheets.filter((sheet) => sheet.kind === 'longitudinal')
  const ends = sheets.filter((sheet) => sheet.kind !== 'longitudinal')
  const system = systems.find(({ id }) => id === valueAt(draft, 'system'))
  return [
    field('system', fields.system, {
      kind: 'pictures',
      choices: systems.map((one) => {
        const end = ends.find(({ joins }) => joins.includes(one.id))
        return { ...named(one), ...(end === undefined ? {} : { svg: picture(end, one, 'splice') }) }
      }),
      put: (into, value) => withEndsOf(into, textOf(value), ends),
    }),
    ...endFields(draft, 'first', system, ends),
    ...endFields(draft, 'second', system, ends),
  ]
}

const named = (sheet: HardwareSheet): Choice => ({ value: sheet.id, label: say(nameOf(sheet)) })

/** The system, with ends that join it in the place of those that do not and have one of their kind. */
function withEndsOf(draft: Draft, system: string, ends: readonly EndSheet[]): Draft {
  return (['first', 'second'] as const).reduce<Draft>(
    (next, end) => {
      const was = ends.find(({ id }) => id === valueAt(draft, `${end}.sheet`))
      if (was === undefined || was.joins.includes(system)) return next
      const other = ends.find(({ kind, joins }) => kind === was.kind && joins.includes(system))
      return other === undefined ? next : withValue(next, `${end}.sheet`, other.id)
    },
    withValue(draft, 'system', system),
  )
}

function endFields(
  draft: Draft,
  end: 'first' | 'second',
  system: LongitudinalSheet | undefined,
  ends: readonly EndSheet[],
): readonly FormField[] {
  const { fields, choices } = words()
  const { field, rail, choice, number } = railFieldMaker(draft)
  const isCounted = valueAt(draft, 'counted') !== undefined
  const at = (name: string): string => `${end}.${name}`
  const kind = ['standingSplice', 'unknown'].find((one) => valueAt(draft, at(one)) !== undefined) ?? 'sheet'
  const chosen = textOf(valueAt(draft, at('sheet')))
  const joining = ends.filter(({ id, joins }) => id === chosen || (system !== undefined && joins.includes(system.id)))
  const pictured = joining.map((sheet) => ({
    ...named(sheet),
    ...(system === undefined ? {} : { svg: picture(sheet, system, 'end') }),
  }))
  const known = [...pictured.map(({ value }) => value), ''].includes(chosen)
  const others = isCounted ? choices.unknownEnd : { standingSplice: choices.standingSplice }
  const which = field(kind === 'unknown' ? at('unknown') : at('sheet'), fields[end], {
    kind: 'pictures',
    choices: [
      ...pictured,
      ...(known ? [] : [{ value: chosen, label: words().noSuchSheet(chosen) }]),
      ...Object.entries(others).map(([value, label]) => ({ value, label })),
    ],
    value: kind === 'standingSplice' ? kind : valueAt(draft, at(kind)),
    put: (into, value) => withValue(into, end, endOf(textOf(value), valueAt(into, at('at')))),
  })
  switch (kind) {
    case 'standingSplice':
      return [
        which,
        rail(at('standingSplice.at'), fields.spliceAt[end]),
        choice(at('standingSplice.position'), fields.splicePosition[end], choices.splice),
      ]
    case 'unknown':
      return [
        which,
        ...(valueAt(draft, at('unknown')) === 'no sheet fits'
          ? [number(at('posts'), fields.endPosts[end], ''), number(at('panels'), fields.endPanels[end], '')]
          : []),
        rail(at('at'), fields.at[end], { isOptional: true }),
      ]
    default:
      return [which, rail(at('at'), fields.at[end], { isOptional: true })]
  }
}

function endOf(value: string, at: unknown): object {
  const fixed = at === undefined || at === null ? {} : { at }
  if (value === 'standingSplice') return { standingSplice: { at: at ?? 0, position: 'post' } }
  if (value === 'no sheet fits' || value === 'not looked at') return { unknown: value, ...fixed, posts: 0, panels: 0 }
  return { sheet: value, ...fixed }
}

/** Drawing one takes longer than all the rest of the form. */
const pictures = new Map<string, string>()

function picture(end: EndSheet, system: LongitudinalSheet, view: UnitView): string {
  const key = [end.id, end.version, system.id, system.version, view, language()].join(' ')
  const svg = pictures.get(key) ?? writeSvg(unitPicture(end, system, view, printIn(null)))
  pictures.set(key, svg)
  return svg
}
