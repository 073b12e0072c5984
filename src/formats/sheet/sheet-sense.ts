import type {
  Dimension,
  EndSheet,
  HardwareSheet,
  LongitudinalSheet,
  Stated,
} from '../../core/hardware/hardware-sheet.ts'
import { marksIn } from '../../core/hardware/marked-values.ts'
import { languages } from '../../core/language.ts'
import { derivedTopics, isReserved, recordTopics } from '../../core/requirements/derived-topics.ts'
import { isLengthUnit, stepsPer, type Unit } from '../../core/units/quantity-kinds.ts'
import { type Contradiction, repeated } from '../contradiction.ts'
import { quantityFault } from '../range/quantity-range.ts'
import { lengthFault, numberFault } from '../range/range-faults.ts'
import type { RangeName } from '../range/ranges.ts'
import { picturesFaults } from './rule-pictures.ts'
import { translatable } from './sheet-texts.ts'

type Path = Contradiction['path']

/** What a sheet of the right shape says that does not hold together; empty when all of it does. */
export function contradictionsIn(sheet: HardwareSheet): readonly Contradiction[] {
  return [
    ...contradictionsBelow(sheet, [], Object.keys(sheet.sources)),
    ...repeated(sheet.parts.map(({ id }, i) => [id, ['parts', i, 'id']])),
    ...repeated(
      sheet.parts.flatMap(({ rules }, i) =>
        rules.map(({ id }, j): [string, Path] => [id, ['parts', i, 'rules', j, 'id']]),
      ),
    ),
    ...sheet.parts.flatMap(({ rules }, i) => rules.flatMap((_, j) => inRule(sheet, i, j))),
    ...inSetAside(sheet),
    ...inSeverities(sheet),
    ...inTranslations(sheet),
    ...picturesFaults(sheet),
    ...(sheet.kind === 'longitudinal' ? inLongitudinal(sheet) : inEnd(sheet)),
  ]
}

/** Sources that do not exist and limits out of order, anywhere below `value`. */
function contradictionsBelow(value: unknown, path: Path, sources: readonly string[]): Contradiction[] {
  if (typeof value !== 'object' || value === null) return []
  const source = 'source' in value && typeof value.source === 'string' ? value.source : null
  const own: Contradiction[] =
    source === null || sources.includes(source)
      ? []
      : [{ path: [...path, 'source'], expected: { kind: 'key of sources', sources } }]
  if ('role' in value && 'measured' in value) own.push(...inDimension(value as Dimension<Unit>, path))
  const below = Object.entries(value).flatMap(([key, inner]) =>
    contradictionsBelow(inner, [...path, Array.isArray(value) ? Number(key) : key], sources),
  )
  return [...own, ...below]
}

const decisive = { floor: 'low', ceiling: 'high', centre: 'nominal' } as const

function inDimension(dimension: Dimension<Unit>, path: Path): Contradiction[] {
  const { low, nominal, high, role, unit } = dimension
  const found: Contradiction[] = (['low', 'nominal', 'high'] as const).flatMap((limit) => {
    const value = dimension[limit]
    if (value === 'notStated') return []
    const range = path.at(-1) === 'railHeight' ? 'railHeight' : 'dimension'
    const expected = isLengthUnit(unit)
      ? lengthFault(range, (value * stepsPer(unit)) / 1e9)
      : quantityFault(value, unit)
    return expected === null ? [] : [{ path: [...path, limit], expected }]
  })
  if (dimension[decisive[role]] === 'notStated')
    found.push({ path: [...path, decisive[role]], expected: { kind: 'number for role', role } })
  if (isAbove(low, nominal)) found.push({ path: [...path, 'nominal'], expected: { kind: 'at least low', value: low } })
  if (isAbove(nominal, high))
    found.push({ path: [...path, 'high'], expected: { kind: 'at least nominal', value: nominal } })
  if (isAbove(low, high)) found.push({ path: [...path, 'high'], expected: { kind: 'at least low', value: low } })
  return found
}

const isAbove = (a: Stated<number>, b: Stated<number>): a is number => a !== 'notStated' && b !== 'notStated' && a > b

function inRule(sheet: HardwareSheet, part: number, index: number): Contradiction[] {
  const rule = sheet.parts[part]?.rules[index]
  if (!rule) throw new RangeError(`the sheet has no rule ${index} in part ${part}`)
  const path: Path = ['parts', part, 'rules', index]
  const found: Contradiction[] = []
  const { id, at, look } = rule
  if (isReserved(id)) found.push({ path: [...path, 'id'], expected: { kind: 'own rule id' } })
  if (at.kind === 'posts' || at.kind === 'panels') {
    const last = lastNumber(sheet, at.kind)
    if (last === null) found.push({ path: [...path, 'at', 'kind'], expected: { kind: 'place of a run' } })
    else
      for (const [i, number] of at.numbers.entries())
        if (number > last)
          found.push({
            path: [...path, 'at', 'numbers', i],
            expected: { kind: 'piece of sheet', pieces: at.kind, last },
          })
    found.push(...repeated(at.numbers.map((number, i) => [`${number}`, [...path, 'at', 'numbers', i]])))
  }
  if (look.kind === 'choose') {
    const choices: Path = [...path, 'look', 'choices']
    found.push(...repeated(look.choices.map(({ id }, i) => [id, [...choices, i, 'id']])))
    for (const right of [true, false])
      if (!look.choices.some((choice) => choice.right === right))
        found.push({ path: choices, expected: { kind: right ? 'right choice' : 'wrong choice' } })
  }
  return found
}

/**
 * Another language's text of something that stands in the sheet: a text that was changed is said in no old words, and the
 * values that it marks are the same.
 */
function inTranslations(sheet: HardwareSheet): Contradiction[] {
  const { language = 'en', translations = {}, earlierTranslations = {} } = sheet
  const texts = new Set(translatable(sheet))
  const said = { translations, earlierTranslations }
  return (['translations', 'earlierTranslations'] as const).flatMap((field) =>
    languages.flatMap((one): Contradiction[] => {
      const path = [field, one]
      const keys = Object.keys(said[field][one] ?? {})
      if (one === language && said[field][one] !== undefined)
        return [{ path, expected: { kind: 'another language', language } }]
      return keys.flatMap((key): Contradiction[] => {
        if (!texts.has(key)) return [{ path: [...path, key], expected: { kind: 'text of sheet' } }]
        const expected = field === 'translations' ? marksFault(key, translations[one]?.[key] ?? '') : null
        return expected === null ? [] : [{ path: [...path, key], expected }]
      })
    }),
  )
}

/** Why a translation does not mark the values of its text. */
export function marksFault(text: string, said: string): Contradiction['expected'] | null {
  const marked = marksIn(text)
  return marksIn(said) === marked ? null : { kind: 'marked values', marked }
}

/** What a reading decides may be set aside, and nothing else: not what the run file decides, nor what is not required. */
function inSetAside({ parts, maySetAside = [] }: HardwareSheet): Contradiction[] {
  const required: readonly string[] = [...derivedTopics, ...parts.flatMap(({ rules }) => rules.map(({ id }) => id))]
  return maySetAside.flatMap(({ topic }, i): Contradiction[] => {
    const path = ['maySetAside', i, 'topic']
    if (!required.includes(topic)) return [{ path, expected: { kind: 'topic or rule' } }]
    return maySetAside.slice(0, i).some((one) => one.topic === topic)
      ? [{ path, expected: { kind: 'not listed before' } }]
      : []
  })
}

/** Of one fault only one thing is said, and only of what is required. */
function inSeverities({ parts, severities = [] }: HardwareSheet): Contradiction[] {
  const required: readonly string[] = [
    ...derivedTopics,
    ...recordTopics,
    ...parts.flatMap(({ rules }) => rules.map(({ id }) => id)),
  ]
  const topics = severities.flatMap((rule, i) =>
    rule.topics.map((topic, j): [string, Path] => [topic, ['severities', i, 'topics', j]]),
  )
  const seen = severities.flatMap((rule, i) =>
    rule.seen.map((kind, j): [string, Path] => [kind, ['severities', i, 'seen', j]]),
  )
  const unknown = topics.flatMap(([topic, path]): Contradiction[] =>
    required.includes(topic) ? [] : [{ path, expected: { kind: 'topic or rule' } }],
  )
  return [...unknown, ...repeated(topics), ...repeated(seen)]
}

/** How many posts or panels of its own an end unit has, an adapter counted as one; null for a longitudinal sheet. */
function lastNumber(sheet: HardwareSheet, kind: 'posts' | 'panels'): number | null {
  if (sheet.kind === 'longitudinal') return null
  return kind === 'posts' ? sheet.posts.length : sheet.panels.own.length + Math.min(1, sheet.panels.adapters.length)
}

function inLongitudinal(sheet: LongitudinalSheet): Contradiction[] {
  const { panels, spacings, omissions, workingWidths } = sheet
  const lengths = (['standard', 'converting', 'endOnly'] as const).flatMap((list) =>
    panels[list].map(({ inches }, i): [string, Path] => [`${inches}`, ['panels', list, i, 'inches']]),
  )
  const short = (['standard', 'converting', 'endOnly'] as const).flatMap((list) =>
    panels[list].flatMap(({ inches }, i) => outside('panel', inches, ['panels', list, i, 'inches'])),
  )
  const found = [
    ...repeated(lengths),
    ...short,
    ...(['full', 'half', 'quarter'] as const).flatMap((name) =>
      outside('spacing', spacings[name].inches, ['spacings', name, 'inches']),
    ),
    ...repeated(
      workingWidths.map(({ spacing, standard }, i) => [`${spacing} ${standard}`, ['workingWidths', i, 'spacing']]),
    ),
  ]
  if (spacings.half.inches >= spacings.full.inches)
    found.push({
      path: ['spacings', 'half', 'inches'],
      expected: { kind: 'less than full', inches: spacings.full.inches },
    })
  if (spacings.quarter.inches >= spacings.half.inches)
    found.push({
      path: ['spacings', 'quarter', 'inches'],
      expected: { kind: 'less than half', inches: spacings.half.inches },
    })
  for (const [i, { specialPostsEachSide, specialPostKind }] of omissions.entries())
    if (specialPostsEachSide > 0 !== (specialPostKind !== null))
      found.push({
        path: ['omissions', i, 'specialPostKind'],
        expected: { kind: specialPostsEachSide > 0 ? 'special posts' : 'no special posts' },
      })
  return found
}

function outside(range: RangeName, value: number, path: Path): Contradiction[] {
  const expected = numberFault(range, value)
  return expected === null ? [] : [{ path, expected }]
}

function inEnd(sheet: EndSheet): Contradiction[] {
  const found = [...repeated(sheet.joins.map((id, i) => [id, ['joins', i]]))]
  for (const [i, { number, along }] of sheet.posts.entries()) {
    const before = sheet.posts[i - 1]?.along
    if (number !== i + 1)
      found.push({ path: ['posts', i, 'number'], expected: { kind: 'post in order', number: i + 1 } })
    if (before !== undefined && along <= before)
      found.push({ path: ['posts', i, 'along'], expected: { kind: 'beyond post before', inches: before } })
    if (i === 0 && along !== 0 && sheet.kind !== 'bridge end')
      found.push({ path: ['posts', 0, 'along'], expected: { kind: 'origin post' } })
  }
  return found
}
