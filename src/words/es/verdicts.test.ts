import { expect, test } from 'vitest'
import type { Measured } from '../../core/verdicts/verdict.ts'
import { english } from '../english.ts'
import { spanish } from '../spanish.ts'

const low: Measured = {
  ...{ kind: 'measured', value: 28.5, unit: 'in', margin: -1.5, uncertainty: 0.12, guard: 0.24, probability: 0.0001 },
  computed: false,
}

test('what a person wrote is not translated, be it a word of the trade', () => {
  const aside = { kind: 'set aside', by: 'Post', because: 'no block' } as const
  expect(english(null).say(aside)).toBe('set aside by Post: no block')
  expect(spanish(null).say(aside)).toBe('apartado por Post: no block')
  expect(spanish('metric').say({ ...aside, because: 'it is 4 in wide' })).toBe('apartado por Post: it is 4 in wide')
})

// An inch is 25.4 mm: 723.9, 38.1 and 6.096 mm.
test('a reason has its lengths in the units asked for, beside those of the limit', () => {
  expect(english(null).say(low)).toBe(
    '28 1/2 in, 1 1/2 in outside the limit; ± 0.240 in (k = 2); probability of conformity under 0.1 %',
  )
  expect(spanish('metric').say(low)).toBe(
    '723.9 mm (28 1/2 in), 38.1 mm (1 1/2 in) fuera del límite; ± 6.1 mm (0.240 in) (k = 2); probabilidad de conformidad menos del 0.1 %',
  )
})

test('a length that follows a number is given its metres too', () => {
  const step = { kind: 'raise post', post: 3, by: 2, unit: 'in', railThen: 31, stubThen: null } as const
  expect(spanish('metric').say({ ...step, holds: null, blockUpTo: null })).toBe(
    'Suba el poste 3 50.8 mm (2 in): la baranda queda a 787.4 mm (31 in).',
  )
})

test('readings that are missing are named by their posts', () => {
  const missing = { of: 'post-3~b/along', post: 4, what: 'along' } as const
  expect(spanish(null).say({ kind: 'readings missing', missing: [missing] })).toBe(
    'no hay lectura directa, y para calcularla faltan: la posición del poste 4',
  )
  const lateral = { of: 'post-7/lateral-offset', post: 7, what: 'offset' } as const
  expect(english(null).say({ kind: 'readings missing', missing: [missing, lateral] })).toBe(
    'no direct reading, and these are missing to compute it: post 4 along the rail, the offset of post 7',
  )
})
