import { type StepValue, text } from './step-values.ts'

/** `#12`, which stands for the line of that number. */
export type StepReference = StepValue

/** The data section of an exchange file while it is written, line by line. */
export interface StepLines {
  /** Adds an instance and gives its reference. */
  add(entity: string, values: readonly StepValue[]): StepReference
  /** The same, but an instance with the same values is written once. Not for what has an identity of its own. */
  share(entity: string, values: readonly StepValue[]): StepReference
  lines(): readonly string[]
}

export function stepLines(): StepLines {
  const lines: string[] = []
  const known = new Map<string, StepReference>()
  const append = (body: string): StepReference => {
    const reference = `#${lines.length + 1}`
    lines.push(`${reference}=${body};`)
    return reference
  }
  const bodyOf = (entity: string, values: readonly StepValue[]): string =>
    `${entity.toUpperCase()}(${values.join(',')})`
  return {
    add: (entity, values) => append(bodyOf(entity, values)),
    share: (entity, values) => {
      const body = bodyOf(entity, values)
      const reference = known.get(body) ?? append(body)
      known.set(body, reference)
      return reference
    },
    lines: () => lines,
  }
}

export interface StepHeader {
  readonly description: string
  readonly name: string
  /** ISO 8601 in UTC, to the second. */
  readonly at: string
  /** Empty when not said. */
  readonly author: string
  readonly schema: string
}

/** The whole exchange file. @source ISO 10303-21:2016, 8 (header section) */
export function printStep({ description, name, at, author, schema }: StepHeader, data: StepLines): string {
  return [
    'ISO-10303-21;',
    'HEADER;',
    `FILE_DESCRIPTION((${text(description)}),'2;1');`,
    `FILE_NAME(${text(name)},${text(at)},(${text(author)}),(''),'Lapwise','Lapwise','');`,
    `FILE_SCHEMA((${text(schema)}));`,
    'ENDSEC;',
    'DATA;',
    ...data.lines(),
    'ENDSEC;',
    'END-ISO-10303-21;',
    '',
  ].join('\n')
}
