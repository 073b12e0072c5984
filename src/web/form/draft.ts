/**
 * A site or run as it is being written: the shape of its file, in which any value may still be wrong. A number that is
 * being typed and is none yet stands in it as a text, so nothing that somebody entered is lost.
 */
export interface Draft {
  readonly [field: string]: unknown
}

type Step = string | number

/** The steps of a place as problems name it: `hazards[1].near` is `hazards`, 1, `near`. */
const stepsOf = (place: string): readonly Step[] =>
  place
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step))

/** What the draft says at `place`; undefined where it says nothing. */
export function valueAt(draft: unknown, place: string): unknown {
  return stepsOf(place).reduce((value: unknown, step) => (value as Record<Step, unknown> | null)?.[step], draft)
}

/** The draft with `value` at `place`; undefined takes the field out. */
export const withValue = (draft: Draft, place: string, value: unknown): Draft =>
  put(draft, stepsOf(place), value) as Draft

function put(into: unknown, [step, ...rest]: readonly Step[], value: unknown): unknown {
  if (step === undefined) return value
  const inner = put((into as Record<Step, unknown> | null)?.[step], rest, value)
  if (typeof step === 'number') return (into as readonly unknown[]).map((item, i) => (i === step ? inner : item))
  const { [step]: _, ...others } = (into ?? {}) as Readonly<Record<Step, unknown>>
  return inner === undefined ? others : { ...(into as object | null), [step]: inner }
}

/** The items of the list at `place`. */
export const itemsAt = (draft: Draft, place: string): readonly unknown[] => {
  const items = valueAt(draft, place)
  return Array.isArray(items) ? items : []
}

export const unitsOf = (draft: Draft): 'us' | 'metric' => (valueAt(draft, 'units') === 'metric' ? 'metric' : 'us')

/** What a typed text means: a number where it is one, nothing where it is empty, else the text itself. */
export function meaningOf(text: string): number | string | undefined {
  const plain = text.trim().replace(/^[\u2212\u2013]/, '-')
  if (plain === '') return undefined
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : text
}

/** A value as it stands in its field. */
export const textOf = (value: unknown): string => (value === null || value === undefined ? '' : String(value))
