import { randomInt } from 'node:crypto'

/** Letters and digits that nobody takes for one another. */
const signs = '23456789ABCDEFGHJKMNPQRSTVWXYZ'
const length = 8
/** Tries that may fail in a minute, from all devices together: at 30^8 codes a guess is hopeless. Our judgement. */
const mostFailures = 10

export type CodeAnswer = 'right' | 'wrong' | 'too many tries'

/** The code by which one device is let in; used once, then there is another. */
export interface EntryCode {
  current(): string
  /** Small letters, blanks and hyphens do not matter. `now` in milliseconds. */
  use(typed: string, now: number): CodeAnswer
}

export function newEntryCode(): EntryCode {
  let code = makeCode()
  let failures: readonly number[] = []
  return {
    current: () => `${code.slice(0, 4)}-${code.slice(4)}`,
    use(typed, now) {
      failures = failures.filter((at) => now - at < 60_000)
      if (failures.length >= mostFailures) return 'too many tries'
      if (typed.toUpperCase().replaceAll(/[\s-]/g, '') !== code) {
        failures = [...failures, now]
        return 'wrong'
      }
      code = makeCode()
      return 'right'
    },
  }
}

const makeCode = (): string => Array.from({ length }, () => signs[randomInt(signs.length)]!).join('')
