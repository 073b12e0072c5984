interface Choice {
  readonly id: string
  readonly label: string
  readonly right: boolean
}

/** Answers one a line, a right one with a plus before it: `+ Tight`. */
export const choicesText = (choices: unknown): string =>
  (Array.isArray(choices) ? (choices as readonly Choice[]) : [])
    .map(({ label, right }) => `${right ? '+' : '-'} ${label}`)
    .join('\n')

/**
 * The answers that the lines say. A line keeps the id that it had at its place or under its label, since readings name it;
 * a new one gets one of its own.
 */
export function readChoices(text: string, before: readonly unknown[]): readonly Choice[] {
  const known = before as readonly Choice[]
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  const labels = lines.map((line) => line.replace(/^\s*[-+−–]\s?/, ''))
  const isSameCount = lines.length === known.length
  const taken = new Set<string>()
  return lines.map((line, i) => {
    const label = labels[i]!
    const own = known.find((one) => one.label === label) ?? (isSameCount ? known[i] : undefined)
    const id = own !== undefined && !taken.has(own.id) ? own.id : freeId(known, taken)
    taken.add(id)
    return { id, label, right: /^\s*\+/.test(line) }
  })
}

function freeId(known: readonly Choice[], taken: ReadonlySet<string>): string {
  for (let n = 1; ; n += 1) {
    const id = `answer-${n}`
    if (!taken.has(id) && !known.some((one) => one.id === id)) return id
  }
}

/** `1, 2` as numbers; what is none stays as it is written, to be refused by its place. */
export function readNumbers(text: string): readonly unknown[] | undefined {
  const parts = text.split(/[\s,;]+/).filter((part) => part !== '')
  return parts.length === 0 ? undefined : parts.map((part) => (/^\d+$/.test(part) ? Number(part) : part))
}
