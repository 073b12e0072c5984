import { expect, it } from 'vitest'
import { demoAsked } from '../../test/fixtures/three-versions.ts'
import type { Obstructed } from '../core/layout/layout.ts'
import { placeOfRefusal } from './place-of-refusal.ts'

const named = (name: string) => ({ name, fromInches: 0, toInches: 1 })

it('a refused gap is shown at the first obstruction in its way, and at none whose name only holds that of another', () => {
  const run = { ...demoAsked({}), obstructions: ['pipe and valve', 'pit', 'valve', 'pipe'].map(named) }
  const shown = (...obstructions: Obstructed) => placeOfRefusal({ kind: 'splice on omitted post', obstructions }, run)
  expect(shown('valve')).toBe('obstructions[2].from')
  expect(shown('pipe', 'pit')).toBe('obstructions[1].from')
  expect(shown('pipe and valve')).toBe('obstructions[0].from')
  expect(shown('no longer there')).toBe('obstructions')
})
